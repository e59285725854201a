#include "temperatures.h"

#include <stdbool.h>

#include "board.h"

static volatile bool is_done;

void temperatures_init(void)
{
    ADC10AE0 = RADIATOR | ROOM;
}

/* The converter has a clock of its own; the rhythm's goes on meanwhile. */
static uint16_t measure(uint16_t input)
{
    ADC10CTL1 = input;
    ADC10CTL0 = ADC10SHT_3 | ADC10ON | ADC10IE;
    is_done = false;
    ADC10CTL0 |= ENC | ADC10SC;
    __disable_interrupt();
    while (!is_done) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
    ADC10CTL0 &= ~ENC;
    ADC10CTL0 = 0;
    return ADC10MEM;
}

void temperatures_measure(struct temperatures *now)
{
    P2OUT |= FEED;
    now->radiator = measure(INCH_0);
    now->room = measure(INCH_1);
    P2OUT &= (uint8_t)~FEED;
}

#pragma vector = ADC10_VECTOR
__interrupt void on_converted(void)
{
    is_done = true;
    __bic_SR_register_on_exit(LPM3_bits);
}
