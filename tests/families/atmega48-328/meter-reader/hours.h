#ifndef HOURS_H
#define HOURS_H

void hours_init(void);
void hours_wait(void);

#endif
