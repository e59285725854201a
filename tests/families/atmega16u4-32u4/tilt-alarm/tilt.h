#ifndef TILT_H
#define TILT_H

void tilt_init(void);
void tilt_wait(void);

#endif
