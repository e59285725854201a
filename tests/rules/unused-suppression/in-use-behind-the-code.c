// device: atxmega32a4u
// rules: shallow-sleep, suppression-without-reason, unused-suppression
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_STDBY_gc); // powerlint: allow shallow-sleep (the crystal takes too long to start)
    sei();
    for (;;) {
        sleep_mode();
    }
}
