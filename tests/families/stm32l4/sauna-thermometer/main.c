// device: stm32l433xx
// flags: -DSTM32L433xx -Wall
// A sauna's thermometer: a glass display that always shows, a thermistor that is looked at every five seconds, a watchdog.
#include "stm32l4xx.h"
#include "thermometer.h"

static void power_prepare(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 = (PWR->CR1 & ~(PWR_CR1_VOS | PWR_CR1_LPMS)) | PWR_CR1_VOS_1 | PWR_CR1_LPMS_STOP2;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    board_pins();
    power_prepare();
    clock_start(5);
    display_start();
    watchdog_start();
    for (;;) {
        display_show(thermistor_tenths());
        watchdog_feed();
        __WFI();
    }
}
