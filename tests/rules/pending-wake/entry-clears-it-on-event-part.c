// device: atxmega32a4u
// Entering the handler clears the flag.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
