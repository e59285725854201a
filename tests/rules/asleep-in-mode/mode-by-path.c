// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_OVF_vect)
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    TCCR0B = _BV(CS02); // finding: asleep-in-mode TIMER0 possible note
    TIMSK0 = _BV(TOIE0);
    WDTCSR |= _BV(WDIE);
    if (PIND & 1) {
        set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    } else {
        set_sleep_mode(SLEEP_MODE_IDLE);
    }
    sei();
    for (;;) {
        sleep_mode();
    }
}
