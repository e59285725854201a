// device: atxmega32a4u
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
    for (;;) {
        cli();
        if (!pressed) {
            sleep_enable();
            sei();
            sleep_cpu(); // clean: check-then-sleep-race pressed
            sleep_disable();
        }
        pressed = 0;
        sei();
        PORTE.OUTTGL = PIN0_bm;
    }
}
