// device: stm32l053xx
// On the bus clock the serial line hears nothing in stop.
#include "../../families/stm32l0/include/stm32l0xx.h"

void RNG_LPUART1_IRQHandler(void) { (void)LPUART1->RDR; }

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE; // finding: asleep-in-mode LPUART1 proven
    NVIC_EnableIRQ(RNG_LPUART1_IRQn);
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
