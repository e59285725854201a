#include "lamp.h"

#include <msp430.h>

#define LAMP BIT6

void lamp_init(void)
{
    P1SEL |= BIT0; // finding: clock-output-on ACLK P1.0 proven
}

void lamp_flash(void)
{
    P1OUT |= LAMP;
    __delay_cycles(200000); // finding: busy-wait-delay lamp_flash() proven
    P1OUT &= (unsigned char)~LAMP;
}
