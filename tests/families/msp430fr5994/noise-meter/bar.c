#include "bar.h"

#include "hall.h"

/* Some 9.4 kHz: five seconds. */
#define COUNTS_TO_SHOW 47000

void bar_init(void)
{
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__VLOCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL0_H = 0;
    TA0CCR0 = COUNTS_TO_SHOW;
    TA0CCTL0 = CCIE;
}

/* The lamps stay on for as long as the timer counts. */
void bar_show(uint16_t count)
{
    uint8_t lamps = 0;

    while (count > 0 && lamps != LAMPS) {
        lamps = (uint8_t)(lamps << 1 | 1);
        count >>= 4;
    }
    P3OUT |= lamps;
    __disable_interrupt();
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    while (P3OUT & LAMPS) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_shown(void)
{
    TA0CTL = 0;
    P3OUT &= (uint8_t)~LAMPS;
    __bic_SR_register_on_exit(LPM4_bits);
}
