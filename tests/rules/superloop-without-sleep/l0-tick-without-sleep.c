// device: stm32l053xx
// flags: -DSTM32L053xx
// A cooperative scheduler that looks at its tick all the time.
#include "stm32l0xx.h"

static volatile uint32_t now;
static uint32_t due[2];

void SysTick_Handler(void)
{
    now++;
}

static void task(uint32_t n)
{
    due[n] = now + 100 * (n + 1);
    GPIOA->ODR ^= 1u << n;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    SysTick->LOAD = 2097;
    SysTick->CTRL = SysTick_CTRL_CLKSOURCE_Msk | SysTick_CTRL_TICKINT_Msk | SysTick_CTRL_ENABLE_Msk;
    for (;;) { // finding: superloop-without-sleep main() proven warning
        for (uint32_t n = 0; n < 2; n++) {
            if ((int32_t)(now - due[n]) >= 0)
                task(n);
        }
    }
}
