// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER1_OVF_vect)
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    TIMSK1 = _BV(TOIE1);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        TCCR1B = _BV(CS10);
        PORTB ^= 1;
        TCCR1B = 0;
        sleep_mode();
    }
}
