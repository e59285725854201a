// device: stm32l073xx
// flags: -DSTM32L073xx
// The clock runs from the crystal; the internal slow oscillator, started in case the crystal fails, is never stopped.
#include "stm32l0xx.h"

void RTC_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR = 1u << 20;
}

static void clock_start(void)
{
    RCC->CSR |= RCC_CSR_LSION; // finding: oscillator-kept-on LSI proven
    while (!(RCC->CSR & RCC_CSR_LSIRDY))
        ;
    RCC->CSR |= RCC_CSR_LSEON;
    while (!(RCC->CSR & RCC_CSR_LSERDY))
        ;
    RCC->CSR |= RCC_CSR_RTCSEL_LSE | RCC_CSR_RTCEN;
}

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_DBP;
    clock_start();
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR |= RTC_CR_WUTIE | RTC_CR_WUTE;
    EXTI->IMR |= 1u << 20;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI();
        // clean: oscillator-kept-on LSE
    }
}
