#include "board.h"

/* Spare pads, driven low so that nothing on them floats. */
#define SPARE_B 0xF9
#define SPARE_C 0x3C
#define SPARE_D 0xE0

void board_init(void)
{
    DDRB = SPARE_B | BRIDGE_SUPPLY | LAMP;
    DDRC = SPARE_C;
    DDRD = SPARE_D | MODEM_OUT | BRIDGE_CLOCK | BRIDGE_DATA;
    PORTD = MODEM_OUT | MODEM_IN | BUTTON;

    /* The analog inputs need no digital buffer. */
    DIDR0 = (1 << ADC0D) | (1 << ADC1D);

    /* Blocks that this product never uses. */
    ACSR = 1 << ACD;
    PRR = (1 << PRTWI) | (1 << PRTIM2) | (1 << PRTIM0) | (1 << PRTIM1) | (1 << PRSPI);

    /* Half a million cycles a second are enough for a scale. The change enable opens the divider for four cycles. */
    CLKPR = 1 << CLKPCE;
    CLKPR = 1 << CLKPS2;
}

void bridge_listen(void)
{
    DDRD &= (uint8_t)~BRIDGE_DATA;
}

void bridge_release(void)
{
    PORTD &= (uint8_t)~BRIDGE_DATA;
    DDRD |= BRIDGE_DATA;
}

void lamp(uint8_t lit)
{
    if (lit)
        /* powerlint: allow load-driven-in-sleep (lit on command, until the next report) */
        PORTB |= LAMP;
    else
        PORTB &= (uint8_t)~LAMP;
}
