#include "timeout.h"

#include <stdint.h>

#include "board.h"
#include "door.h"

/* The internal oscillator makes some 9.4 kHz; divided by 8 and by 8 again, 120 s are 17600 counts. */
#define COUNTS_TO_RING 17600

static volatile bool is_running;
static volatile bool is_over;

void timeout_init(void)
{
    CSCTL0_H = CSKEY >> 8;
    CSCTL2 = SELA__VLOCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL0_H = 0;
    TA0CCR0 = COUNTS_TO_RING;
    TA0EX0 = TAIDEX_7;
    TA0CCTL0 = CCIE;
}

void timeout_start(void)
{
    if (is_running)
        return;
    TA0CTL = TASSEL__ACLK | ID__8 | TACLR | MC__UP;
    is_running = true;
    is_over = false;
}

void timeout_stop(void)
{
    TA0CTL = 0;
    is_running = false;
    is_over = false;
}

bool timeout_is_running(void)
{
    return is_running;
}

bool timeout_is_over(void)
{
    return is_over;
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_time_over(void)
{
    TA0CTL = 0;
    is_running = false;
    is_over = true;
    door_happened();
    __bic_SR_register_on_exit(LPM4_bits);
}
