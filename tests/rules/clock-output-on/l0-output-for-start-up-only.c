// device: stm32l053xx
// flags: -DSTM32L053xx
// The clock is put out while the crystal settles; then its selection goes back to none.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void put_out(uint32_t source)
{
    RCC->CFGR = (RCC->CFGR & ~(0xFu << RCC_CFGR_MCOSEL_Pos)) | source << RCC_CFGR_MCOSEL_Pos;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * 8))) | 2u << (2 * 8);
    put_out(7);
    for (volatile uint32_t i = 0; i < 1000; i++)
        ;
    put_out(0);
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: clock-output-on MCO
    }
}
