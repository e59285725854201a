#ifndef RHYTHM_H
#define RHYTHM_H

enum rhythm { RHYTHM_NOTHING, RHYTHM_MEASURE, RHYTHM_ASKED };

void rhythm_init(void);

/* Sleeps until it is time to measure, or the other end of the cable asks. */
enum rhythm rhythm_wait(void);

#endif
