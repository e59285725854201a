#include "driver.h"

static volatile uint32_t tick_count;

uint32_t ticks(void) { return tick_count; }

void SysTick_Handler(void) { tick_count++; }

void pins_setup(port_registers *port, const pin_settings *settings)
{
    uint32_t position = 0;

    while ((settings->pins >> position) != 0) {
        uint32_t here = settings->pins & (1UL << position);
        if (here) {
            uint32_t value;
            if ((settings->mode & 3) == PIN_OUTPUT || (settings->mode & 3) == PIN_ALTERNATE) {
                value = port->OSPEEDR;
                value &= ~(3UL << (position * 2));
                value |= settings->speed << (position * 2);
                port->OSPEEDR = value;
            }
            if ((settings->mode & 3) == PIN_ALTERNATE) {
                value = port->AFR[position >> 3];
                value &= ~(0xFUL << ((position & 7) * 4));
                value |= settings->alternate << ((position & 7) * 4);
                port->AFR[position >> 3] = value;
            }
            value = port->PUPDR;
            value &= ~(3UL << (position * 2));
            value |= settings->pull << (position * 2);
            port->PUPDR = value;

            value = port->MODER;
            value &= ~(3UL << (position * 2));
            value |= (settings->mode & 3) << (position * 2);
            port->MODER = value;

            if (settings->mode & PIN_EDGE) {
                EXTI->IMR |= here;
                EXTI->RTSR |= here;
            }
        }
        position++;
    }
}

void pins_release(port_registers *port, uint32_t pins)
{
    for (uint32_t position = 0; position < 16; position++) {
        if (pins & (1UL << position)) {
            port->MODER |= 3UL << (position * 2);
            port->PUPDR &= ~(3UL << (position * 2));
            EXTI->IMR &= ~(1UL << position);
        }
    }
}

void pins_write(port_registers *port, uint32_t pins, int level)
{
    if (level)
        port->BSRR = pins;
    else
        port->BRR = pins;
}

WEAK void ticker_attach(ticker *self) { (void)self; }

outcome ticker_start(ticker *self)
{
    if (self == NULL || self->state == OUTCOME_BUSY)
        return OUTCOME_BUSY;
    ticker_attach(self);
    self->timer->DIER |= 1u;
    self->timer->CR1 |= 1u;
    self->state = OUTCOME_BUSY;
    return OUTCOME_OK;
}

outcome ticker_stop(ticker *self)
{
    self->timer->DIER &= ~1u;
    self->timer->CR1 &= ~1u;
    self->state = OUTCOME_OK;
    return OUTCOME_OK;
}

void ticker_interrupt(ticker *self)
{
    if (self->timer->SR & 1u) {
        self->timer->SR = ~1u;
        if (self->elapsed)
            self->elapsed(self);
    }
}

outcome wait_for_bits(volatile uint32_t *at, uint32_t bits, uint32_t most_ticks)
{
    uint32_t start = ticks();
    while ((*at & bits) != bits) {
        if (ticks() - start > most_ticks)
            return OUTCOME_TIMEOUT;
    }
    return OUTCOME_OK;
}

WEAK void board_setup(void) { GPIOB->MODER = 0; }
