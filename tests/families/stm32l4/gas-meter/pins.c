#include "meter.h"

#include "stm32l4xx.h"

typedef struct {
    GPIO_TypeDef *port;
    uint8_t pin;
    uint8_t function;
} route;

static const route routes[] = {
    {GPIOB, 5, 1},  /* LPTIM1 counts the reed contact's pulses here; the board pulls it up. */
    {GPIOB, 11, 8}, /* LPUART1 to the radio */
};

static void route_pin(const route *r)
{
    uint32_t at = 4u * (r->pin & 7u);

    r->port->AFR[r->pin >> 3] = (r->port->AFR[r->pin >> 3] & ~(15u << at)) | (uint32_t)r->function << at;
    r->port->MODER = (r->port->MODER & ~(3u << 2 * r->pin)) | 2u << 2 * r->pin;
}

// Reset leaves nearly all pads analog; those of the debug port stay.
void pins_prepare(void)
{
    RCC->AHB2ENR |= RCC_AHB2ENR_GPIOBEN;
    for (unsigned i = 0; i < sizeof routes / sizeof routes[0]; i++)
        route_pin(&routes[i]);
    RCC->AHB2ENR &= ~RCC_AHB2ENR_GPIOBEN;
}
