#include "display.h"

#include <msp430fr6989.h>

#define COMMONS (BIT3 | BIT4 | BIT5 | BIT6)

/* The segments stay off until there is something to show: the controller runs all the same. */
void display_init(void)
{
    P6SEL0 |= COMMONS;
    P6SEL1 |= COMMONS;
    LCDCPCTL0 = 0x000F;
    LCDCCTL0 = LCDON | LCDLP | LCDSSEL; // finding: peripheral-on-in-sleep LCD_C proven warning
}

void display_show(uint8_t minutes)
{
    LCDMEM[0] = minutes;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_2; // finding: analog-pin-buffer-on P1.2 proven warning
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 = 0;
}
