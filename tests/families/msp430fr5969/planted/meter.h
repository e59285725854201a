#ifndef METER_H
#define METER_H

#include <msp430.h>

/* P1.1 sees the meter's reed contact. */
#define REED BIT1

void meter_init(void);
void meter_send(void);

#endif
