// device: atmega328p
// flags: -DF_CPU=8000000UL
// A driver that takes a pointer to an init structure.
#include <avr/io.h>
#include <avr/sleep.h>

typedef enum { INPUT, INPUT_PULLUP, OUTPUT_LOW, OUTPUT_HIGH } pin_mode_t;

typedef struct {
    volatile uint8_t *pin_register;
    uint8_t pins;
    pin_mode_t mode;
} pin_init_t;

static void pin_init(const pin_init_t *init)
{
    volatile uint8_t *direction = init->pin_register + 1;
    volatile uint8_t *port = init->pin_register + 2;
    for (uint8_t position = 0; position < 8; position++) {
        uint8_t mask = (uint8_t)(1u << position);
        if (!(init->pins & mask))
            continue;
        switch (init->mode) {
        case INPUT:
            *direction &= ~mask;
            *port &= ~mask;
            break;
        case INPUT_PULLUP:
            *direction &= ~mask;
            *port |= mask;
            break;
        case OUTPUT_HIGH:
            *port |= mask;
            *direction |= mask;
            break;
        case OUTPUT_LOW:
        default:
            *port &= ~mask;
            *direction |= mask;
        }
    }
}

int main(void)
{
    pin_init_t init = {.pin_register = &PINB, .pins = 0x0F, .mode = OUTPUT_LOW};
    pin_init(&init);
    init.pins = 0x30;
    init.mode = INPUT_PULLUP;
    pin_init(&init);
    pin_init(&(pin_init_t){&PIND, 0xC3, OUTPUT_HIGH});
    pin_init(&(pin_init_t){.pin_register = &PINC, .pins = 0xFF, .mode = INPUT_PULLUP});
    pin_init_t copy = init;
    copy.pin_register = &PINC;
    copy.pins &= 0x15;
    copy.mode = INPUT;
    pin_init(&copy);
    set_sleep_mode(SLEEP_MODE_EXT_STANDBY);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0x0f, PORTB = 0x30, DDRD = 0xc3, PORTD = 0xc3, PORTC = 0b0110_1111
}
