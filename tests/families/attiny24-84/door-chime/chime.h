#ifndef CHIME_H
#define CHIME_H

#include <stdint.h>

/* Half periods in steps of eight microseconds. */
#define NOTE_HIGH 94
#define NOTE_LOW 119

void chime_init(void);
void chime_play(uint8_t half_period);
void chime_stop(void);

#endif
