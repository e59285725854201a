// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// The input buffers are off from reset on; the key's has its pull-up, an output needs none.
#include "nrf52.h"

#define KEY 13u
#define LAMP 17u
#define PULL_UP (3u << 2)
#define SENSE_LOW (3u << 16)

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_P0->OUT ^= 1u << LAMP;
}

int main(void)
{
    NRF_P0->PIN_CNF[KEY] = PULL_UP | SENSE_LOW;
    NRF_P0->PIN_CNF[LAMP] = GPIO_PIN_CNF_DIR_Output;
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: floating-pin P0.00 P0.13 P0.17 P0.31
    }
}
