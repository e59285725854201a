#ifndef CLOCK_H
#define CLOCK_H

enum clock_event { CLOCK_NOTHING, CLOCK_REPORT_IS_DUE };

void clock_init(void);

/* Sleeps until the time comes for something. */
enum clock_event clock_wait(void);

#endif
