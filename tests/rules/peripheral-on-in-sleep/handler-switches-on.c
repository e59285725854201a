// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// The handler switches the converter on again at each wake-up, and nobody switches it off.
ISR(WDT_vect)
{
    ADCSRA |= _BV(ADEN); // finding: peripheral-on-in-sleep ADC proven
}

int main(void)
{
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
