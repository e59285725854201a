// device: stm32l053xx
// flags: -DSTM32L053xx
// The pass without sleep takes care of what the handler counted.
#include "stm32l0xx.h"

static volatile uint32_t letters;
static uint32_t told;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
    letters++;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN | RCC_IOPENR_IOPBEN;
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __disable_irq();
        if (told == letters)
            __WFI(); // clean: skipped-sleep main()
        __enable_irq();
        while (told != letters) {
            told++;
            GPIOB->BSRR = 1u << 5;
        }
    }
}
