#ifndef TICKS_H
#define TICKS_H

void ticks_init(void);
void ticks_wait(void);

#endif
