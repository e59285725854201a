#include "display.h"

#include <msp430fr6972.h>

#define COMMONS (BIT3 | BIT4 | BIT5 | BIT6)

void display_init(void)
{
    P6SEL0 |= COMMONS;
    P6SEL1 |= COMMONS;
    LCDCPCTL1 = 0x00F0;
    LCDCCTL0 = LCDSSEL | LCDPRE__16 | LCD4MUX | LCDLP;
    LCDCCTL0 |= LCDON;
}

void display_show(uint8_t price)
{
    LCDMEM[10] = price;
}
