#include "driver.h"

#include <avr/interrupt.h>
#include <util/atomic.h>

static volatile uint16_t tick_count;

const bank banks[2] = {{{PORT_A, PORT_B}}, {{PORT_C, PORT_D}}};

ISR(TIMER0_COMPA_vect)
{
    tick_count++;
}

uint16_t tick_now(void)
{
    uint16_t now;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) { now = tick_count; }
    return now;
}

void tick_start(void)
{
    OCR0A = 124;
    TCCR0A = _BV(WGM01);
    TIMSK0 |= _BV(OCIE0A);
    TCCR0B = _BV(CS01);
}

void tick_stop(void)
{
    TCCR0B &= ~_BV(CS01);
    TIMSK0 &= ~_BV(OCIE0A);
}

void pins_setup(const bank *bank, const pin_settings *settings)
{
    uint8_t position = 0;

    while ((settings->pins >> position) != 0) {
        if (settings->pins & (1U << position)) {
            port_registers *port = bank->ports[position >> 3];
            uint8_t mask = 1U << (position & 7);
            switch (settings->mode) {
            case PIN_OUTPUT_LOW:
            case PIN_OUTPUT_HIGH:
                if (settings->mode == PIN_OUTPUT_HIGH)
                    port->out |= mask;
                else
                    port->out &= ~mask;
                port->direction |= mask;
                break;
            case PIN_INPUT_PULLED:
                port->direction &= ~mask;
                port->out |= mask;
                break;
            default:
                port->direction &= ~mask;
                port->out &= ~mask;
                break;
            }
        }
        if (++position == 16)
            break;
    }
}

void pins_write(const bank *bank, uint16_t pins, uint8_t level)
{
    for (uint8_t position = 0; position < 16; position++) {
        if (!(pins & (1U << position)))
            continue;
        volatile uint8_t *out = &bank->ports[position / 8]->out;
        uint8_t value = *out;
        value &= ~(1U << (position % 8));
        value |= (level ? 1U : 0U) << (position % 8);
        *out = value;
    }
}

void gate_open(gate which)
{
    PRR0 &= ~(1U << which);
}

void gate_close(gate which)
{
    PRR0 |= 1U << which;
}

__attribute__((weak)) void serial_attach(serial *self)
{
    (void)self;
}

outcome serial_open(serial *self)
{
    if (self == NULL || self->is_open)
        return OUTCOME_BUSY;
    serial_attach(self);
    *self->format = (uint8_t)((self->bits - 5) << UCSZ00);
    *self->control |= _BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0);
    self->is_open = 1;
    return OUTCOME_OK;
}

outcome serial_close(serial *self)
{
    *self->control &= ~(_BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0));
    self->is_open = 0;
    return OUTCOME_OK;
}

outcome wait_for(volatile uint8_t *at, uint8_t bits, uint16_t most_ticks)
{
    uint16_t start = tick_now();
    while ((*at & bits) != bits) {
        if ((uint16_t)(tick_now() - start) > most_ticks)
            return OUTCOME_TIMEOUT;
    }
    return OUTCOME_OK;
}
