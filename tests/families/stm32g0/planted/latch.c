#include "flap.h"

#include "stm32g0xx.h"

#define LATCH 8u /* PA8 */

void latch_init(void)
{
    RCC->IOPENR |= RCC_IOPENR_GPIOAEN;
    GPIOA->BRR = 1u << LATCH;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * LATCH))) | 1u << (2 * LATCH);
    RCC->APBENR1 |= RCC_APBENR1_UCPD1EN; // finding: peripheral-clock-left-on UCPD1 proven
}

void latch_set(int is_shut)
{
    GPIOA->BSRR = is_shut ? 1u << LATCH : 1u << (LATCH + 16);
}
