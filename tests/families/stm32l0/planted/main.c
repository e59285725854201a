// device: stm32l073xx
// flags: -DSTM32L073xx -Wall
// A cellar's frost warner: every minute it feeds a thermistor's divider, looks at it, and sounds a horn below a limit.
#include "stm32l0xx.h"
#include "clock.h"
#include "thermistor.h"

#define HORN 5u /* PB5 */
#define PROBE 6u /* PB6 */
#define FROST 2900u

static void pins_park(void)
{
    GPIOC->ODR = 0; // finding: gated-write GPIOC.ODR proven
    RCC->IOPENR = RCC_IOPENR_IOPAEN | RCC_IOPENR_IOPBEN;
    GPIOA->MODER |= 3u << (2 * 4);
    GPIOB->BRR = 1u << HORN;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << (2 * HORN))) | 1u << (2 * HORN);
    GPIOB->MODER &= ~(3u << (2 * PROBE)); // finding: floating-pin PB6 proven
}

static void rest_prepare(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_DBGMCUEN;
    DBGMCU->CR = DBGMCU_CR_DBG_STOP; // finding: debug-kept-on DBGMCU.CR proven
    RCC->APB2ENR &= ~RCC_APB2ENR_DBGMCUEN;
    RCC->APB1ENR |= RCC_APB1ENR_I2C1EN; // finding: peripheral-clock-left-on I2C1 proven
    PWR->CR |= PWR_CR_ULP | PWR_CR_FWU;
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
        __WFI(); // finding: full-power-regulator VREG proven
    }
}
