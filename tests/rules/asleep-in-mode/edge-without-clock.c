// device: atxmega32a4u
// Without the peripheral clock only pin 2 of a port notices a single edge.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTC_INT0_vect)
{
}

ISR(PORTD_INT0_vect)
{
}

int main(void)
{
    PORTC.PIN3CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTC.INT0MASK = 1 << 3;
    PORTC.INTCTRL = PORT_INT0LVL_LO_gc; // finding: asleep-in-mode PORTC
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTD.INT0MASK = 1 << 2;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc; // clean: asleep-in-mode PORTD
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    SLEEP.CTRL = SLEEP_SMODE_PDOWN_gc | SLEEP_SEN_bm;
    sei();
    for (;;) {
        sleep_cpu();
    }
}
