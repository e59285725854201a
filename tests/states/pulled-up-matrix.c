// device: atmega1284p
// flags: -DF_CPU=8000000UL
// A keypad matrix: rows driven one by one, columns pulled up, everything parked for the night.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define ROWS 4
#define COLUMNS 4

static volatile uint8_t key_events;

ISR(PCINT2_vect)
{
    key_events++;
}

static uint16_t scan(void)
{
    uint16_t keys = 0;
    for (uint8_t row = 0; row < ROWS; row++) {
        DDRC = (DDRC & 0x0F) | (0x10 << row);
        PORTC = (PORTC & 0x0F);
        __asm__ __volatile__("nop");
        keys = keys << COLUMNS | (~PINC & 0x0F);
    }
    return keys;
}

static void park(void)
{
    DDRC = 0xF0;
    PORTC = 0x0F;
}

int main(void)
{
    PORTA = PORTB = PORTD = 0xFF;
    PCICR |= _BV(PCIE2);
    PCMSK2 = 0x0F;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    park();
    sei();
    for (;;) {
        sleep_mode(); // state: DDRC = 0xf0, PORTC = 0x0f, PCMSK2 = 0x0f
        cli();
        OCR3A = scan();
        park();
        sei();
    }
}
