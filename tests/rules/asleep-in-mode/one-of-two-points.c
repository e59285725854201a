// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER1_COMPA_vect)
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    OCR1A = 1000;
    TCCR1B = _BV(WGM12) | _BV(CS10); // finding: asleep-in-mode TIMER1 proven warning
    TIMSK1 = _BV(OCIE1A);
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        set_sleep_mode(SLEEP_MODE_IDLE);
        sleep_mode();
        set_sleep_mode(SLEEP_MODE_PWR_DOWN);
        sleep_mode(); // related: asleep-in-mode {{power-down}}
    }
}
