#ifndef TICKS_H
#define TICKS_H

void ticks_init(void);

/* Returns four times a minute. */
void ticks_sleep(void);

#endif
