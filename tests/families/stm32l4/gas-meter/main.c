// device: stm32l476xx
// flags: -DSTM32L476xx -Wall
// A gas meter's counter: a timer counts a reed contact's pulses while everything else stands, and tells a radio the litres once an hour.
#include "meter.h"
#include "stm32l4xx.h"

static char text[12];

static const char *written(uint32_t number)
{
    char *at = text + sizeof text - 1;

    *at = '\0';
    do {
        *--at = (char)('0' + number % 10u);
        number /= 10u;
    } while (number && at > text);
    return at;
}

void rest_in(uint32_t mode)
{
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_LPMS) | mode;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    pins_prepare();
    crystal_start();
    counter_start();
    hour_start();
    rest_in(PWR_CR1_LPMS_STOP2);
    for (;;) {
        if (hour_is_over())
            radio_send(written(counter_litres()));
        __WFI();
    }
}
