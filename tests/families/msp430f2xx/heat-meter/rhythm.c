#include "rhythm.h"

#include <stdbool.h>

#include "board.h"

/* 12 kHz or so, divided by eight in the clock module and by eight here: a round takes three minutes. */
#define ROUND 33750

static volatile bool is_due;

void rhythm_init(void)
{
    BCSCTL1 |= DIVA_3;
    TACCR0 = ROUND;
    TACCTL0 = CCIE;
    TACTL = TASSEL_1 | ID_3 | MC_1 | TACLR;
}

void rhythm_sleep(void)
{
    __disable_interrupt();
    while (!is_due) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    is_due = false;
    __enable_interrupt();
}

#pragma vector = TIMERA0_VECTOR
__interrupt void on_round(void)
{
    is_due = true;
    __bic_SR_register_on_exit(LPM3_bits);
}
