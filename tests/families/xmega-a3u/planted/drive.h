#ifndef DRIVE_H
#define DRIVE_H

void drive_init(void);
void drive_step(void);

#endif
