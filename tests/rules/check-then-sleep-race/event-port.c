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
    sei();
    for (;;) {
        if (!pressed)
            sleep_mode(); // finding: check-then-sleep-race pressed proven
        pressed = 0;
        PORTE.OUTTGL = PIN0_bm;
    }
}
