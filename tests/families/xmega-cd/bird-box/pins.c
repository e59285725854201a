#include "box.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint16_t visits;

ISR(PORTD_INT0_vect)
{
    visits++;
}

static void port_park(PORT_t *port, uint8_t but)
{
    register8_t *control = &port->PIN0CTRL;

    for (uint8_t pin = 0; pin < 8; pin++)
        if (!(but & (1 << pin)))
            control[pin] = PORT_ISC_INPUT_DISABLE_gc;
}

void pins_prepare(void)
{
    port_park(&PORTA, 0);
    port_park(&PORTB, 0);
    port_park(&PORTC, 1 << LAMP);
    port_park(&PORTD, 1 << PERCH);
    port_park(&PORTE, 0);
    port_park(&PORTR, 0);
    PORTC.DIRSET = 1 << LAMP;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTD.INT0MASK = 1 << PERCH;
    PORTD.INTCTRL = PORT_INT0LVL_MED_gc;

    PR.PRGEN = PR_USB_bm | PR_RTC_bm | PR_EVSYS_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_USART0_bm | PR_SPI_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_TC0_bm;
}

uint16_t visits_now(void)
{
    return visits;
}
