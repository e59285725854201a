// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    ADCSRA = _BV(ADEN) | _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) {
    }
    DDRB = (uint8_t)ADC;
    for (;;) {
        sleep_mode();
    }
}
