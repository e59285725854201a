// device: stm32g071xx
// A port's registers take nothing before its clock is on.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }

int main(void)
{
    EXTI->FTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    GPIOB->PUPDR |= 1; // finding: gated-write GPIOB.PUPDR proven
    RCC->IOPENR |= RCC_IOPENR_GPIOBEN;
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
