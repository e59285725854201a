// device: attiny85
// flags: -DF_CPU=8000000UL
// 16-bit int and integer promotion decide these values.
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    uint8_t a = 0xF0;
    int8_t b = -16;
    uint16_t big = 0xFFFF;
    DDRB = (~a >> 4) & 0x3F;
    if (a == (uint8_t)b)
        PORTB |= _BV(0);
    if (a != b)
        PORTB |= _BV(1);
    if (-1 < 1u)
        PORTB |= _BV(2);
    if (big + 1 == 0)
        PORTB |= _BV(3);
    if ((int8_t)0x80 >> 1 == -64)
        PORTB |= _BV(4);
    OCR0A = (a << 4) >> 8;
    OCR0B = (uint8_t)(a << 1) >> 1;
    OCR1A = (uint8_t)((300 * 300L) >> 8);
    OCR1B = 'A' - '\xff';
    OCR1C = (-7 / 2) * 10 + -7 % 3;
    MCUCR = _BV(SM1) | _BV(SE);
    for (;;)
        sleep_cpu(); // state: DDRB = 0x30, PORTB = 0b0001_1011, OCR0A = 15, OCR0B = 0x70, OCR1A = 95, OCR1B = 66, OCR1C = 0xe1
}
