// device: stm32l053xx
// Two seconds are the longest period of the timer at this division, and each wake-up has work.
#include "../../families/stm32l0/include/stm32l0xx.h"

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
    RCC->IOPENR = RCC_IOPENR_IOPBEN;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 2 * 4)) | 1u << 2 * 4;
    RCC->APB1ENR |= RCC_APB1ENR_PWREN | RCC_APB1ENR_LPTIM1EN;
    PWR->CR |= PWR_CR_DBP | PWR_CR_LPSDSR | PWR_CR_ULP;
    RCC->CSR |= RCC_CSR_LSEON;
    RCC->CCIPR |= RCC_CCIPR_LPTIM1SEL;
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
