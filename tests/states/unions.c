// device: atmega1284p
// flags: -DF_CPU=8000000UL
// One word of configuration, taken apart through a union.
#include <avr/io.h>
#include <avr/sleep.h>

typedef union {
    uint32_t word;
    uint8_t byte[4];
    struct {
        uint16_t low;
        uint16_t high;
    } half;
} pattern_t;

int main(void)
{
    pattern_t outputs = {.word = 0xF00F3C81UL};
    pattern_t levels;
    levels.half.low = 0x1234;
    levels.half.high = ~levels.half.low;
    DDRA = outputs.byte[0];
    DDRB = outputs.byte[1];
    DDRC = outputs.byte[2];
    DDRD = outputs.byte[3];
    levels.word += 0x100;
    PORTA = levels.byte[0];
    PORTB = levels.byte[1];
    PORTC = levels.byte[2];
    PORTD = levels.byte[3];
    PRR0 = 0xFF & ~_BV(PRTIM2);
    PRR1 = _BV(PRTIM3);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRA = 0x81, DDRD = 0xf0, PORTA = 0x34, PORTB = 0x13, PORTC = 0xcb, PORTD = 0xed
}
