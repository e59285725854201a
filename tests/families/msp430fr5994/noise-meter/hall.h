#ifndef HALL_H
#define HALL_H

#include <msp430fr5994.h>

/* P1.1 has the rectified sound, P6.2 the key against ground, P3.0 to P3.3 the lamps. No crystal. */
#define SOUND BIT1
#define KEY BIT2
#define LAMPS (BIT0 | BIT1 | BIT2 | BIT3)

void hall_init(void);

/* Returns when the key was pressed. */
void hall_wait(void);

#endif
