// device: attiny85
// The frequency multiplier for timer 1 is started, and the timer then takes the system clock.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER1_OVF_vect)

int main(void)
{
    PLLCSR = _BV(PLLE); // finding: oscillator-kept-on PLL proven
    TCCR1 = _BV(CS13);
    TIMSK = _BV(TOIE1);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
