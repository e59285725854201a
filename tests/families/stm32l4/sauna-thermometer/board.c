#include "stm32l4xx.h"
#include "thermometer.h"

#define ANALOG 3u
#define ALTERNATE 2u
#define OUTPUT 1u
#define GLASS 11u

// Pads of each port that go to the glass: commons and segments.
static const struct {
    GPIO_TypeDef *port;
    uint16_t pads;
} glass[] = {{GPIOA, 0x870E}, {GPIOB, 0x03F8}, {GPIOC, 0x003F}};

static void set_two(volatile uint32_t *at, unsigned pin, uint32_t value)
{
    *at = (*at & ~(3u << 2 * pin)) | value << 2 * pin;
}

void board_pins(void)
{
    RCC->AHB2ENR |= RCC_AHB2ENR_GPIOAEN | RCC_AHB2ENR_GPIOBEN | RCC_AHB2ENR_GPIOCEN;
    for (unsigned i = 0; i < sizeof glass / sizeof glass[0]; i++) {
        for (unsigned pin = 0; pin < 16; pin++) {
            if (!(glass[i].pads >> pin & 1u))
                continue;
            glass[i].port->AFR[pin / 8] |= GLASS << 4 * (pin % 8);
            set_two(&glass[i].port->PUPDR, pin, 0);
            set_two(&glass[i].port->MODER, pin, ALTERNATE);
        }
    }
    // The thermistor's feed is PA6, its middle PA5.
    GPIOA->BRR = 1u << 6;
    set_two(&GPIOA->MODER, 6, OUTPUT);
    set_two(&GPIOA->MODER, 5, ANALOG);
}
