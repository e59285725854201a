#include "stm32g0xx.h"
#include "valve.h"

#define BUTTON 6u /* PA6, to ground while pressed */

static volatile uint8_t was_pressed;

void EXTI4_15_IRQHandler(void)
{
    if (EXTI->FPR1 & 1u << BUTTON) {
        EXTI->FPR1 = 1u << BUTTON;
        was_pressed = 1;
    }
}

void button_init(void)
{
    RCC->IOPENR |= RCC_IOPENR_GPIOAEN;
    GPIOA->PUPDR |= 1u << (2 * BUTTON);
    GPIOA->MODER &= ~(3u << (2 * BUTTON));
    EXTI->EXTICR[BUTTON / 4] &= ~(0xFFu << (8 * (BUTTON % 4)));
    EXTI->FTSR1 |= 1u << BUTTON;
    EXTI->IMR1 |= 1u << BUTTON;
    NVIC_EnableIRQ(EXTI4_15_IRQn);
}

int button_was_pressed(void)
{
    int was = was_pressed;

    was_pressed = 0;
    return was;
}
