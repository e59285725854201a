// device: atxmega32a4u
// Interrupts are on at the test, but not those of the level of the one that sets the flag.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char pressed;

ISR(PORTD_INT0_vect) { pressed = 1; }

int main(void)
{
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        PMIC.CTRL = 0;
        if (!pressed) {
            cli();
            PMIC.CTRL = PMIC_LOLVLEN_bm;
            sleep_enable();
            sei();
            sleep_cpu(); // clean: check-then-sleep-race pressed
            sleep_disable();
        }
        pressed = 0;
        PORTE.OUTTGL = PIN0_bm;
    }
}
