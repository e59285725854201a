// device: attiny85
// The timer runs only at times, and its interrupt is not what switches it on: it may run for nothing.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)
EMPTY_INTERRUPT(TIMER0_OVF_vect)

int main(void)
{
    PCMSK = _BV(PCINT1);
    GIMSK = _BV(PCIE);
    ACSR = _BV(ACD);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        if ((PINB & _BV(PB1)) == 0)
            TCCR0B = _BV(CS02); // finding: peripheral-on-in-sleep TIMER0 possible
        else
            TIMSK = _BV(TOIE0);
        sleep_mode();
    }
}
