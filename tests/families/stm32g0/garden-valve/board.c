#include "stm32g0xx.h"
#include "valve.h"

#define OPENING 4u /* PB4 and PB5 drive the two halves of a latching valve's coil */
#define CLOSING 5u
#define PULSE 3u /* in 100 Hz ticks */

static volatile uint8_t ticks;

void TIM14_IRQHandler(void)
{
    TIM14->SR = ~TIM_SR_UIF;
    if (ticks)
        ticks--;
}

void board_init(void)
{
    RCC->IOPENR |= RCC_IOPENR_GPIOBEN;
    GPIOB->BRR = 1u << OPENING | 1u << CLOSING;
    GPIOB->MODER = (GPIOB->MODER & ~(15u << (2 * OPENING))) | 5u << (2 * OPENING);

    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 = (PWR->CR1 & ~(PWR_CR1_VOS | PWR_CR1_LPMS)) | PWR_CR1_VOS_1 | PWR_CR1_LPMS_0;
    PWR->CR3 |= PWR_CR3_ENB_ULP;
}

// The coil takes a pulse of 30 ms, which a timer counts while the CPU sleeps.
void valve_move(int is_open)
{
    GPIOB->BSRR = is_open ? 1u << OPENING : 1u << CLOSING;
    RCC->APBENR2 |= RCC_APBENR2_TIM14EN;
    TIM14->PSC = 159;
    TIM14->ARR = 999;
    TIM14->DIER = TIM_DIER_UIE;
    TIM14->SR = 0;
    ticks = PULSE;
    TIM14->CR1 = TIM_CR1_CEN;
    NVIC_EnableIRQ(TIM14_IRQn);

    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __disable_irq();
    while (ticks) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();

    NVIC_DisableIRQ(TIM14_IRQn);
    TIM14->CR1 = 0;
    RCC->APBENR2 &= ~RCC_APBENR2_TIM14EN;
    GPIOB->BRR = 1u << OPENING | 1u << CLOSING;
}
