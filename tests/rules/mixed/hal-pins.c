// device: atmega328p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Pins through a layer of functions: two pins are configured as plain inputs, one of them is read.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

typedef enum { PIN_INPUT, PIN_INPUT_PULLED, PIN_OUTPUT } pin_mode;

typedef struct {
    volatile uint8_t *pin;
    uint8_t bit;
} pin_id;

#define AS_PIN(port, n) ((pin_id){ &PIN##port, (n) })

static void pin_set_mode(pin_id id, pin_mode mode)
{
    volatile uint8_t *direction = id.pin + 1;
    volatile uint8_t *output = id.pin + 2;
    uint8_t mask = (uint8_t)(1u << id.bit);
    switch (mode) {
    case PIN_INPUT:
        *direction &= (uint8_t)~mask;
        *output &= (uint8_t)~mask;
        // finding@-1: floating-pin PB4 proven warning
        // finding@-2: floating-pin PD4 board-dependent note
        break;
    case PIN_INPUT_PULLED:
        *direction &= (uint8_t)~mask;
        *output |= mask;
        break;
    default:
        *direction |= mask;
        break;
    }
}

static uint8_t pin_get(pin_id id)
{
    return (*id.pin >> id.bit) & 1;
}

EMPTY_INTERRUPT(TIMER0_OVF_vect)

int main(void)
{
    for (uint8_t i = 0; i < 8; i++) {
        pin_set_mode(AS_PIN(B, i), PIN_OUTPUT);
        pin_set_mode(AS_PIN(C, i), PIN_OUTPUT);
        pin_set_mode(AS_PIN(D, i), PIN_INPUT_PULLED);
    }
    pin_set_mode(AS_PIN(B, 4), PIN_INPUT);
    pin_set_mode(AS_PIN(D, 4), PIN_INPUT);
    ACSR |= _BV(ACD);
    TCCR0B = _BV(CS02) | _BV(CS00);
    TIMSK0 = _BV(TOIE0);
    sei();
    for (;;) {
        if (pin_get(AS_PIN(D, 4)))
            PORTB ^= _BV(PB5);
        set_sleep_mode(SLEEP_MODE_IDLE);
        sleep_mode();
    }
}
