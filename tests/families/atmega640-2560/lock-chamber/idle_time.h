#ifndef IDLE_TIME_H
#define IDLE_TIME_H

void idle_time(void);

#endif
