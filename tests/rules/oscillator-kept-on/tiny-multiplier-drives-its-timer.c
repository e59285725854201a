// device: attiny861
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER1_OVF_vect)

int main(void)
{
    PLLCSR = _BV(PLLE);
    while (!(PLLCSR & _BV(PLOCK))) {
    }
    PLLCSR |= _BV(PCKE);
    TCCR1B = _BV(CS13) | _BV(CS10);
    TIMSK = _BV(TOIE1);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode(); // clean: oscillator-kept-on PLL
    }
}
