// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(ADC_vect)

int main(void)
{
    ACSR = _BV(ACD);
    ADCSRA = _BV(ADEN) | _BV(ADIE);
    set_sleep_mode(SLEEP_MODE_ADC);
    sei();
    for (;;) {
        sleep_mode();
    }
}
