// device: atxmega32e5
// A mask lets one write configure several pins of a port.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTC_INT_vect)
{
    PORTC.INTFLAGS = 0xff;
}

int main(void)
{
    PORTCFG.MPCMASK = 0xff; // finding: floating-pin PD0 PD1 PD2 PD3 proven
    PORTA.PIN0CTRL = PORT_ISC_INPUT_DISABLE_gc; // clean: floating-pin PA0..PA7
    PORTCFG.MPCMASK = 0xf0;
    PORTD.PIN0CTRL = PORT_OPC_PULLUP_gc;
    // clean: floating-pin PD4..PD7
    PORTC.DIRSET = 0xfb;
    PORTC.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTC.INTMASK = 1 << 2;
    PORTC.INTCTRL = PORT_INTLVL_LO_gc;
    PORTR.PIN0CTRL = PORT_OPC_PULLDOWN_gc;
    PORTR.PIN1CTRL = PORT_OPC_WIREDANDPULL_gc;
    // clean: floating-pin PC0..PC7
    // clean: floating-pin PR0
    // clean: floating-pin PR1
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    SLEEP.CTRL = SLEEP_SMODE_PDOWN_gc | SLEEP_SEN_bm;
    sei();
    for (;;) {
        sleep_cpu(); // state: PORTD.PIN4CTRL = 0b0001_1000
    }
}
