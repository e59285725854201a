// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    ADCSRA = _BV(ADEN);
    for (;;) {
        ADCSRA |= _BV(ADSC);
        while (ADCSRA & _BV(ADSC)) // finding: polling-wait ADCSRA proven warning {{ADC_vect}}
            ;
        PORTB = (uint8_t)ADC;
        sleep_mode();
    }
}
