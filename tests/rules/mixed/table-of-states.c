// device: atmega328p
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// A machine of states behind pointers, and pins parked from a table that lacks a row.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

typedef struct {
    volatile uint8_t *direction;
    volatile uint8_t *output;
    uint8_t outputs;
    uint8_t pulls;
} port_row;

static const port_row rows[] = {
    { &DDRB, &PORTB, 0xff, 0x00 },
    { &DDRD, &PORTD, 0xf0, 0x0f },
};

enum state { RESTING, BLINKING, STATES };

static enum state rest(void);
static enum state blink(void);

static enum state (*const table[STATES])(void) = { rest, blink };

ISR(INT0_vect)
{
    EIMSK = 0;
}

static enum state rest(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    sei();
    sleep_cpu();
    sleep_disable();
    return BLINKING;
}

static enum state blink(void)
{
    for (uint8_t i = 0; i < 3; i++) {
        PORTB |= _BV(PB5);
        _delay_ms(100); // finding: busy-wait-delay blink() proven warning {{100 ms}}
        PORTB &= (uint8_t)~_BV(PB5);
        _delay_ms(100); // finding: busy-wait-delay blink() proven warning {{100 ms}}
    }
    return RESTING;
}

int main(void)
{
    enum state now = RESTING; // finding: floating-pin PC0..PC5 proven note
    for (uint8_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        *rows[i].direction = rows[i].outputs;
        *rows[i].output = rows[i].pulls;
    }
    for (;;)
        now = table[now]();
}
