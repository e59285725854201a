// device: stm32l476xx
// Two seconds are the longest period of the timer at this division, and each wake-up has work.
#include "../../families/stm32l4/include/stm32l4xx.h"

static volatile uint8_t ticks;
static volatile uint8_t is_due;

void LPTIM1_IRQHandler(void)
{
    LPTIM1->ICR = LPTIM_ICR_ARRMCF;
    if (++ticks >= 1) {
        ticks = 0;
        is_due = 1;
    }
}

int main(void)
{
    RCC->AHB2ENR = RCC_AHB2ENR_GPIOBEN;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 2 * 4)) | 1u << 2 * 4;
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN | RCC_APB1ENR1_LPTIM1EN;
    PWR->CR1 |= PWR_CR1_DBP | PWR_CR1_LPMS_STOP2;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPTIM1SEL_Pos;
    LPTIM1->IER = LPTIM_IER_ARRMIE;
    LPTIM1->CR = LPTIM_CR_ENABLE;
    LPTIM1->ARR = 65535;
    LPTIM1->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(LPTIM1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        if (is_due) {
            is_due = 0;
            GPIOB->ODR ^= 1u << 4;
        }
        __WFI();
    }
}
