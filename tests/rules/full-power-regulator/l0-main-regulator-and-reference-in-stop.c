// device: stm32l053xx
// The main regulator and the reference stay on in stop.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    EXTI->RTSR |= 1;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI(); // finding: full-power-regulator VREG proven
    // finding@-1: full-power-regulator VREFINT proven
}
