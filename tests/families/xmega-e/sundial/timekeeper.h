#ifndef TIMEKEEPER_H
#define TIMEKEEPER_H

void timekeeper_init(void);
void timekeeper_wait(void);

#endif
