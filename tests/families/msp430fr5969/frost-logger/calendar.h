#ifndef CALENDAR_H
#define CALENDAR_H

void calendar_init(void);

/* Returns when ten minutes have gone by. */
void calendar_wait(void);

#endif
