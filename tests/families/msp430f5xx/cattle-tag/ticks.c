#include "ticks.h"

#include <stdbool.h>

#include "board.h"

static volatile bool is_due;

void ticks_init(void)
{
    TA0CCR0 = 61439;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | ID_3 | MC_1 | TACLR;
}

void ticks_sleep(void)
{
    __disable_interrupt();
    while (!is_due) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    is_due = false;
    __enable_interrupt();
}

#pragma vector = TIMER0_A0_VECTOR
__interrupt void on_tick(void)
{
    is_due = true;
    __bic_SR_register_on_exit(LPM3_bits);
}
