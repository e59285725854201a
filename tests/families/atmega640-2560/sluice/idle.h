#ifndef IDLE_H
#define IDLE_H

void idle_until_tick(void);

#endif
