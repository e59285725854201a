// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    SLEEP.CTRL = SLEEP_SMODE_ESTDBY_gc | SLEEP_SEN_bm; // finding: shallow-sleep proven {{power-down}}
    sei();
    for (;;) {
        sleep_cpu();
    }
}
