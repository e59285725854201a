#include "board.h"

/* Nothing is read but the float: every other input buffer is off. */
static void park(PORT_t *port)
{
    register8_t *control = &port->PIN0CTRL;

    for (uint8_t pin = 0; pin < 8; pin++) {
        control[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
}

void board_init(void)
{
    /* The rain can wait: a quarter of the clock that the part starts with. */
    _PROTECTED_WRITE(CLKCTRL.MCLKCTRLB, CLKCTRL_PEN_bm | (0x04 << 1));

    park(&PORTA);
    park(&PORTC);
    park(&PORTD);
    park(&PORTF);

    PORTA.OUTCLR = LAMP_bm;
    PORTA.DIRSET = LAMP_bm;
    /* Pin 2 senses edges without a clock. */
    PORTC.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
}

void board_lamp(uint8_t is_on)
{
    if (is_on) {
        PORTA.OUTSET = LAMP_bm;
    } else {
        PORTA.OUTCLR = LAMP_bm;
    }
}
