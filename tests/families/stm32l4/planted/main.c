// device: stm32l486xx
// flags: -DSTM32L486xx -Wall
// A vineyard's wetness warner: every ten minutes it feeds a probe, looks at it, and opens a valve when the leaves are dry.
#include "clock.h"
#include "probe.h"
#include "stm32l4xx.h"

#define VALVE 0u /* PB0 */
#define DRY 900u

static void clocks_prepare(void)
{
    RCC->CR |= RCC_CR_HSION | RCC_CR_HSIKERON; // finding: oscillator-kept-on HSI16 proven
    while (!(RCC->CR & RCC_CR_HSIRDY))
        ;
    RCC->CFGR |= RCC_CFGR_SW_HSI;
    RCC->CR &= ~RCC_CR_MSION;
}

static void rest_prepare(void)
{
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_VOS) | PWR_CR1_VOS_1;
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_LPMS) | PWR_CR1_LPMS_STOP1;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    clocks_prepare();
    clock_start();
    probe_prepare();
    GPIOB->BRR = 1u << VALVE;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 2 * VALVE)) | 1u << 2 * VALVE;
    rest_prepare();
    for (;;) {
        if (probe_wetness() < DRY)
            GPIOB->BSRR = 1u << VALVE;
        else
            GPIOB->BRR = 1u << VALVE;
        __WFI();
    }
}
