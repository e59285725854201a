#include "interval.h"

#include <stdbool.h>

#include "board.h"

static volatile bool is_over;

/* Some 12 kHz, divided by eight twice: 187 counts are a second, more or less. */
static void start(unsigned int seconds)
{
    is_over = false;
    TA0CCR0 = seconds * 187u - 1;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_1 | ID_3 | MC_1 | TACLR;
}

static void stop(void)
{
    TA0CTL = TASSEL_1 | ID_3;
    TA0CCTL0 = 0;
    __enable_interrupt();
}

void interval_wait(unsigned int seconds)
{
    start(seconds);
    __disable_interrupt();
    while (!is_over) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    stop();
}

/* The fast clock goes on for the tone. */
void interval_wait_sounding(unsigned int seconds)
{
    start(seconds);
    __disable_interrupt();
    while (!is_over) {
        __bis_SR_register(LPM1_bits | GIE);
        __disable_interrupt();
    }
    stop();
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_end(void)
{
    is_over = true;
    __bic_SR_register_on_exit(LPM3_bits);
}
