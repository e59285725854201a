#include "rhythm.h"

#include <stdint.h>

#include "board.h"
#include "cable.h"

/* The slow clock runs at some 9.4 kHz; divided by 64, a round of the timer takes about six minutes. */
#define ROUND 52875

static volatile enum rhythm due;

void rhythm_init(void)
{
    TA1CCR0 = ROUND;
    TA1EX0 = TAIDEX_7;
    TA1CCTL0 = CCIE;
    TA1CTL = TASSEL__ACLK | ID__8 | MC__UP | TACLR;
}

enum rhythm rhythm_wait(void)
{
    enum rhythm now;

    __disable_interrupt();
    while (due == RHYTHM_NOTHING) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    now = due;
    due = RHYTHM_NOTHING;
    __enable_interrupt();
    return now;
}

/* Whoever wakes the part clears all bits of the deepest sleep, for the converter's is deeper than this one's. */
#pragma vector = TIMER1_A0_VECTOR
__interrupt void on_round(void)
{
    due = RHYTHM_MEASURE;
    __bic_SR_register_on_exit(LPM4_bits);
}

#pragma vector = USCI_A1_VECTOR
__interrupt void on_byte(void)
{
    if (cable_serve() == CABLE_ASKED) {
        due = RHYTHM_ASKED;
        __bic_SR_register_on_exit(LPM4_bits);
    }
}
