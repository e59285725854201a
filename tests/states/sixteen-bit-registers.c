// device: atmega328p
// flags: -DF_CPU=8000000UL
// Timer 1 with its 16-bit registers, written whole, by halves and by arithmetic.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t beats;

ISR(TIMER1_COMPA_vect)
{
    beats++;
}

int main(void)
{
    TCCR1A = 0;
    TCCR1B = _BV(WGM12) | _BV(CS11) | _BV(CS10);
    OCR1A = 12500 - 1;
    OCR1B = (uint16_t)(40000u + 30000u);
    ICR1H = 0x12;
    ICR1L = 0x34;
    TIMSK1 |= _BV(OCIE1A);
    UBRR0 = F_CPU / 16 / 9600 - 1;
    DDRB |= 0x3F;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode(); // state: OCR1AH = 0x30, OCR1AL = 0xd3, OCR1BH = 0x11, OCR1BL = 0x70, TIMSK1 = 0x02
    }
}
