// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_OVF_vect)

int main(void)
{
    TCCR0B = _BV(CS00);
    TIMSK0 = _BV(TOIE0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // finding: no-wake-source SLEEP proven error {{TIMER0_OVF_vect is enabled but cannot}}
    }
}
