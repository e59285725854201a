#include "probe.h"

#include "stm32g0xx.h"

static void set_mode(GPIO_TypeDef *port, uint32_t pin, uint32_t mode)
{
    port->MODER = (port->MODER & ~(3u << (2 * pin))) | mode << (2 * pin);
}

// The power delivery pins are analog here; the strobe takes the pull-downs for a dead battery off them.
void pins_prepare(void)
{
    RCC->APBENR2 |= RCC_APBENR2_SYSCFGEN;
    SYSCFG->CFGR1 |= SYSCFG_CFGR1_UCPD1_STROBE | SYSCFG_CFGR1_UCPD2_STROBE;
    RCC->APBENR2 &= ~RCC_APBENR2_SYSCFGEN;

    RCC->IOPENR = RCC_IOPENR_GPIOAEN;
    GPIOA->BRR = 1u << 1;
    GPIOA->AFR[0] |= 6u << (4 * 2) | 6u << (4 * 3); /* LPUART1 on PA2 and PA3 */
    set_mode(GPIOA, 1, 1);                          /* feeds the gauge */
    set_mode(GPIOA, 2, 2);
    set_mode(GPIOA, 3, 2);
}
