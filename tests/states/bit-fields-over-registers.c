// device: atmega328p
// flags: -DF_CPU=8000000UL
// Registers seen through bit-fields.
#include <avr/io.h>
#include <avr/sleep.h>

typedef struct {
    uint8_t b0 : 1;
    uint8_t b1 : 1;
    uint8_t b2 : 1;
    uint8_t b3 : 1;
    uint8_t b4 : 1;
    uint8_t b5 : 1;
    uint8_t b6 : 1;
    uint8_t b7 : 1;
} bits_t;

typedef struct {
    uint8_t enable : 1;
    uint8_t mode : 3;
    uint8_t : 4;
} sleep_control_t;

#define BITS(reg) (*(volatile bits_t *)&(reg))
#define SLEEP_CONTROL (*(volatile sleep_control_t *)&SMCR)

int main(void)
{
    BITS(DDRB).b5 = 1;
    BITS(DDRB).b0 = 1;
    BITS(PORTB).b1 = 1;
    BITS(PORTB).b2 = BITS(PORTB).b1;
    BITS(PORTB).b3 = !BITS(PORTB).b1;
    BITS(PORTD).b7 = SMCR + 3;
    BITS(ACSR).b7 = 1;
    SLEEP_CONTROL.mode = 2;
    SLEEP_CONTROL.enable = 1;
    for (;;)
        sleep_cpu(); // state: DDRB = 0x21, PORTB = 0x06, PORTD = 0x80, SMCR = 0x05
}
