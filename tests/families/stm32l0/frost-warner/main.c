// device: stm32l053xx
// flags: -DSTM32L053xx -Wall
// An orchard's frost warner: every minute it feeds a thermistor's divider, looks at it, and sounds a horn below a limit.
#include "stm32l0xx.h"
#include "clock.h"
#include "thermistor.h"

#define HORN 5u /* PB5 */
#define FROST 2900u

// All pads but the feed, the thermistor and the horn stay analog, as reset leaves most of them.
static void pins_park(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN | RCC_IOPENR_IOPBEN;
    GPIOA->MODER |= 3u << (2 * 4);
    GPIOB->BRR = 1u << HORN;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << (2 * HORN))) | 1u << (2 * HORN);
}

static void rest_prepare(void)
{
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP | PWR_CR_FWU;
    PWR->CR |= PWR_CR_CWUF;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    pins_park();
    clock_start();
    thermistor_init();
    rest_prepare();
    for (;;) {
        if (thermistor_read() > FROST)
            GPIOB->BSRR = 1u << HORN;
        else
            GPIOB->BRR = 1u << HORN;
        __WFI();
    }
}
