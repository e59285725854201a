#ifndef PAUSE_H
#define PAUSE_H

void pause_init(void);

/* Sleeps for four seconds. */
void pause(void);

#endif
