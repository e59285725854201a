#include "buzzer.h"

#include "board.h"

/* 2 kHz from a clock of 1 MHz. */
#define PERIOD 500u

void buzzer_on(void)
{
    TA1CCR0 = PERIOD - 1;
    TA1CCR1 = PERIOD / 2;
    TA1CCTL1 = OUTMOD_7;
    P2SEL |= DISC;
    TA1CTL = TASSEL_2 | MC_1 | TACLR;
}

/* The pin is low again before the clock stops. */
void buzzer_off(void)
{
    P2SEL &= (unsigned char)~DISC;
    TA1CTL = TASSEL_2;
    TA1CCTL1 = OUTMOD_0;
}
