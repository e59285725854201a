// device: atxmega32a4u
// Mode and enable bit share a register and one write.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    SLEEP.CTRL = SLEEP_SMODE_PDOWN_gc | SLEEP_SEN_bm;
    sei();
    for (;;) {
        sleep_cpu(); // clean: sleep-disabled SLEEP
    }
}
