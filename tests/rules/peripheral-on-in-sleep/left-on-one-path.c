// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    ADCSRA = _BV(ADEN); // finding: peripheral-on-in-sleep ADC possible note
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (PIND & 1) {
            ADCSRA &= ~_BV(ADEN);
        }
        sleep_mode();
    }
}
