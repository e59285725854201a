// device: nrf52840_xxaa
// After reset every pin is cut off its input buffer; a pull holds one that is read, and a channel drives one.
#include "nrf.h"

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    NRF_P1->PIN_CNF[5] = (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_P1->PIN_CNF[6] = GPIO_PIN_CNF_PULL_Pulldown << GPIO_PIN_CNF_PULL_Pos;
    NRF_P1->PIN_CNF[7] = 0;
    NRF_GPIOTE->CONFIG[0] = GPIOTE_CONFIG_MODE_Task | (1u << 13) | (7u << GPIOTE_CONFIG_PSEL_Pos) | (3u << GPIOTE_CONFIG_POLARITY_Pos);
    for (;;) {
        __WFE(); // clean: floating-pin P0.13 P1.05 P1.06 P1.07
    }
}
