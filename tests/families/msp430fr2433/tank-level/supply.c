#include "supply.h"

void supply_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;

    PAOUT = 0;
    PADIR = (unsigned int)~(LINE_WAKE << 8 | FLOAT);
    PAREN = LINE_WAKE << 8;
    P3OUT = 0;
    P3DIR = BIT0 | BIT1 | BIT2;
    SYSCFG2 |= ADCPCTL5;
    P1SEL0 |= LINE_OUT;
    PM5CTL0 &= ~LOCKLPM5;

    PMMCTL0 = PMMPW;
}
