// device: stm32g081xx
// flags: -DSTM32G081xx -Wall
// A cat's flap: a latch falls each time that the flap has moved twice.
#include "flap.h"
#include "stm32g0xx.h"

static void rest_prepare(void)
{
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 = PWR_CR1_VOS_1 | PWR_CR1_LPMS_0;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    unsigned moves = 0; // finding: pull-against-level PA8 possible note

    flap_init();
    latch_init();
    rest_prepare();
    for (;;) {
        __disable_irq();
        if (!flap_moved())
            // finding@+3: full-power-regulator FLASH proven
            // finding@+2: pending-wake EXTI.RPR1.RPIF3 proven error
            // finding@+1: brown-out-always-on BOR proven note
            __WFI();
        __enable_irq();
        if (flap_moved())
            latch_set(++moves & 1u);
    }
}
