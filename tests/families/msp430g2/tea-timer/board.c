#include "board.h"

/* The crystal's pins are ports like the others here, and the third port has pads even where the package has no legs for it. */
void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = KEY;
    P1REN = KEY;
    P1DIR = (unsigned char)~KEY;
    P2SEL = 0;
    P2OUT = 0;
    P2DIR = 0xFF;
    P3OUT = 0;
    P3DIR = 0xFF;
    BCSCTL1 |= DIVA_3;
    BCSCTL3 = LFXT1S_2;
}
