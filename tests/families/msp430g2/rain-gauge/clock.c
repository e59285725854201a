#include "clock.h"

#include <stdint.h>

#include "board.h"

/* The internal oscillator runs at 12 kHz or so; divided by eight twice, the timer takes some five minutes to go round. */
#define ROUND 56249
#define ROUNDS_TO_REPORT 3

static volatile uint8_t rounds;

void clock_init(void)
{
    BCSCTL3 = LFXT1S_2;
    BCSCTL1 |= DIVA_3;
    TA0CCR0 = ROUND;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | ID_3 | MC_1 | TACLR;
}

enum clock_event clock_wait(void)
{
    __disable_interrupt();
    while (rounds < ROUNDS_TO_REPORT) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    rounds = 0;
    __enable_interrupt();
    return CLOCK_REPORT_IS_DUE;
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_round(void)
{
    if (++rounds >= ROUNDS_TO_REPORT)
        __bic_SR_register_on_exit(LPM3_bits);
}
