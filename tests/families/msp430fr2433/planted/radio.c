#include "radio.h"

#include <msp430fr2433.h>

#define RADIO_DATA BIT1

void radio_init(void)
{
    /* The bits' time base. */
    TA1CTL = TASSEL__SMCLK | MC__CONTINUOUS; // finding: peripheral-on-in-sleep TA1 proven warning
}

void radio_send(uint8_t command)
{
    for (uint8_t bit = 0; bit < 8; bit++) {
        if (command >> bit & 1)
            P1OUT |= RADIO_DATA;
        else
            P1OUT &= (uint8_t)~RADIO_DATA;
        __delay_cycles(2000); // finding: busy-wait-delay radio_send() proven
    }
}
