// device: stm32g071xx
// The strobe takes the pull-down off.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }

int main(void)
{
    RCC->IOPENR |= RCC_IOPENR_GPIOAEN;
    GPIOA->BSRR = 1u << 8;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << 2 * 8)) | 1u << 2 * 8;
    RCC->APBENR2 |= RCC_APBENR2_SYSCFGEN;
    SYSCFG->CFGR1 |= SYSCFG_CFGR1_UCPD1_STROBE;
    RCC->APBENR2 &= ~RCC_APBENR2_SYSCFGEN;
    EXTI->FTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
