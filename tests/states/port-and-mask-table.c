// device: atmega328p
// flags: -DF_CPU=16000000UL
// {port, mask} rows; the direction register is reached as the byte below the port.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

typedef struct {
    volatile uint8_t *port;
    uint8_t mask;
} pin_t;

#define DIRECTION(pin) (*((pin)->port - 1))

static pin_t leds[3] = {{&PORTB, _BV(5)}, {&PORTD, _BV(7)}, {&PORTC, _BV(2)}};
static pin_t const keys[] = {{&PORTD, _BV(2)}, {&PORTD, _BV(3)}, {&PORTB, _BV(0)}, {0, 0}};

int main(void)
{
    for (pin_t *led = leds; led < leds + 3; led++) {
        DIRECTION(led) |= led->mask;
        *led->port &= ~led->mask;
    }
    for (const pin_t *key = keys; key->port; key++) {
        DIRECTION(key) &= ~key->mask;
        *key->port |= key->mask;
    }
    *leds[1].port ^= leds[1].mask;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sleep_mode(); // state: DDRB = 0x20, PORTB = 0x01, PORTD = 0b1000_1100, DDRC = 0x04
    return 0;
}
