// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_OVF_vect)
EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    TCCR0B = _BV(CS00);
    TIMSK0 = _BV(TOIE0);
    PCMSK0 = 1;
    PCICR = _BV(PCIE0);
    // clean: shallow-sleep idle
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
