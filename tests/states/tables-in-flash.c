// device: atmega328p
// flags: -DF_CPU=8000000UL
// Tables kept in program memory, read byte by byte and word by word.
#include <avr/io.h>
#include <avr/pgmspace.h>
#include <avr/sleep.h>

static const uint8_t directions[3] PROGMEM = {0x2A, 0x15, 0xF1};
static const uint8_t levels[3] PROGMEM = {0x05, 0x6A, 0x0E};
static const uint16_t compare[2] PROGMEM = {0x1234, 0xBEEF};

typedef struct {
    uint8_t bit;
    uint8_t high;
} entry_t;

static const entry_t entries[] PROGMEM = {{0, 1}, {3, 0}, {5, 1}};

int main(void)
{
    DDRB = pgm_read_byte(&directions[0]);
    DDRC = pgm_read_byte(&directions[1]);
    DDRD = pgm_read_byte(directions + 2);
    PORTB = pgm_read_byte(levels);
    PORTC = pgm_read_byte(&levels[1]);
    PORTD = pgm_read_byte(&levels[2]);
    OCR1A = pgm_read_word(&compare[1]);
    for (uint8_t i = 0; i < sizeof entries / sizeof entries[0]; i++) {
        entry_t entry;
        memcpy_P(&entry, &entries[i], sizeof entry);
        if (entry.high)
            PORTB |= 1 << entry.bit;
        else
            PORTB &= ~(1 << entry.bit);
    }
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0x2a, DDRD = 0xf1, OCR1AH = 0xbe, OCR1AL = 0xef, PORTB = 0x25
}
