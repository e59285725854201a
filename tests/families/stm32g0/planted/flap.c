#include "flap.h"

#include "stm32g0xx.h"

#define FLAP 3u /* PB3, a switch to ground */

static volatile unsigned char has_moved;

void EXTI2_3_IRQHandler(void)
{
    EXTI->FPR1 = 1u << FLAP;
    has_moved = 1;
}

void flap_init(void)
{
    RCC->IOPENR |= RCC_IOPENR_GPIOBEN;
    GPIOB->PUPDR |= 1u << (2 * FLAP);
    GPIOB->MODER &= ~(3u << (2 * FLAP));
    EXTI->EXTICR[0] |= 1u << (8 * FLAP);
    EXTI->FTSR1 |= 1u << FLAP;
    EXTI->RTSR1 |= 1u << FLAP;
    EXTI->IMR1 |= 1u << FLAP;
    NVIC_EnableIRQ(EXTI2_3_IRQn);
}

int flap_moved(void)
{
    int had = has_moved;

    has_moved = 0;
    return had;
}
