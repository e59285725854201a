// device: atmega328p
// flags: -DF_CPU=8000000UL
// A second counter on timer 2 with a watch crystal, sleeping in power-save.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t seconds;
static volatile uint16_t minutes;

ISR(TIMER2_OVF_vect)
{
    if (++seconds == 60) {
        seconds = 0;
        minutes++;
    }
}

int main(void)
{
    ASSR |= _BV(AS2);
    TCNT2 = 0;
    TCCR2A = 0;
    TCCR2B = _BV(CS22) | _BV(CS20);
    TIFR2 = 0xFF;
    TIMSK2 = _BV(TOIE2);
    PORTB = 0x3F;
    PORTC = 0x3F;
    PORTD = 0xFF;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // state: TCCR2B = 0x05, TIMSK2 = 0x01
        sleep_disable();
        OCR2B = seconds;
    }
}
