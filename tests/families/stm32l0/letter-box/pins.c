#include "driver.h"

static uint32_t code_of(const GPIO_TypeDef *port)
{
    return ((uint32_t)(uintptr_t)port - 0x50000000u) / 0x400u;
}

void port_clock(GPIO_TypeDef *port, int is_on)
{
    uint32_t bit = 1u << code_of(port);

    if (is_on)
        RCC->IOPENR |= bit;
    else
        RCC->IOPENR &= ~bit;
}

static void field_write(volatile uint32_t *at, uint32_t position, uint32_t width, uint32_t value)
{
    uint32_t bits = *at;

    bits &= ~(((1u << width) - 1) << position);
    bits |= value << position;
    *at = bits;
}

void pins_setup(GPIO_TypeDef *port, const pin_settings *settings)
{
    for (uint32_t n = 0; n < 16; n++) {
        if (!(settings->pins & (1u << n)))
            continue;
        if ((settings->mode & 3) == PIN_ALTERNATE)
            field_write(&port->AFR[n >> 3], 4 * (n & 7), 4, settings->alternate);
        field_write(&port->PUPDR, 2 * n, 2, settings->pull);
        field_write(&port->MODER, 2 * n, 2, settings->mode & 3);
        if (settings->mode & PIN_FALLING) {
            RCC->APB2ENR |= RCC_APB2ENR_SYSCFGEN;
            field_write(&SYSCFG->EXTICR[n >> 2], 4 * (n & 3), 4, code_of(port));
            RCC->APB2ENR &= ~RCC_APB2ENR_SYSCFGEN;
            EXTI->FTSR |= 1u << n;
            EXTI->IMR |= 1u << n;
        }
    }
}
