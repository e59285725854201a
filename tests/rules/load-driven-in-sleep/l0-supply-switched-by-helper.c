// device: stm32l053xx
// flags: -DSTM32L053xx
// board: PA2: { load: "thermistor's divider", active: high, milliamps: 0.3 }
// The helper switches by the set and reset register; nobody calls it with 0.
#include "stm32l0xx.h"

#define FEED 2u

static volatile uint32_t level;

void RTC_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR = 1u << 20;
}

static void feed(int is_on)
{
    GPIOA->BSRR = is_on ? 1u << FEED : 1u << (FEED + 16); // finding: load-driven-in-sleep PA2 proven {{thermistor}}
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * FEED))) | 1u << (2 * FEED);
    EXTI->IMR |= 1u << 20;
    NVIC_EnableIRQ(RTC_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        feed(1);
        level = GPIOA->IDR;
        __WFI();
    }
}
