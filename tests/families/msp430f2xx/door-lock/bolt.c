#include "bolt.h"

#include <stdbool.h>

#include "board.h"

#define TRAVEL 6000
#define HOLD 60000

static volatile bool is_over;

void bolt_init(void)
{
    P4SEL = 0;
}

/* The slow clock counts; the motor needs no other. */
static void run_for(uint16_t ticks, uint8_t output)
{
    P4OUT |= output;
    is_over = false;
    TACCR0 = ticks;
    TACCTL0 = CCIE;
    TACTL = TASSEL_1 | MC_1 | TACLR;
    __disable_interrupt();
    while (!is_over) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
    TACTL = 0;
    P4OUT &= (uint8_t)~output;
}

void bolt_open(void)
{
    run_for(TRAVEL, OUT_OPEN);
    run_for(HOLD, 0);
    run_for(TRAVEL, OUT_CLOSE);
}

#pragma vector = TIMERA0_VECTOR
__interrupt void on_time(void)
{
    is_over = true;
    __bic_SR_register_on_exit(LPM4_bits);
}
