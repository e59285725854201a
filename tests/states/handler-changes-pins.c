// device: atmega1284p
// flags: -DF_CPU=8000000UL
// A handler that switches a converter and a pin on; main undoes only one of them.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t woke;

ISR(TIMER2_COMPA_vect)
{
    ADCSRA |= _BV(ADEN);
    DDRC |= _BV(6);
    woke = 1;
}

int main(void)
{
    PORTA = PORTB = PORTD = 0xFF;
    TCCR2A = _BV(WGM21);
    OCR2A = 77;
    TCCR2B = _BV(CS22);
    TIMSK2 = _BV(OCIE2A);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode(); // state: DDRC = 0b0?00_0000, PORTA = 0xff, OCR2A = 77
        if (woke) {
            woke = 0;
            cli();
            ADCSRA &= ~_BV(ADEN);
            sei();
        }
    }
}
