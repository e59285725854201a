// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// board: P0.17: { load: "lamp to the supply", active: low, milliamps: 3 }
// board: P0.18: { load: "sensor", active: high }
#include "nrf52.h"

#define LAMP 17u
#define SENSOR 18u

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_P0->OUTSET = 1u << SENSOR;
    (void)NRF_P0->IN;
    NRF_P0->OUTCLR = 1u << SENSOR;
}

int main(void)
{
    NRF_P0->OUT = 1u << LAMP;
    NRF_P0->PIN_CNF[LAMP] = GPIO_PIN_CNF_DIR_Output | GPIO_PIN_CNF_INPUT_Disconnect;
    NRF_P0->PIN_CNF[SENSOR] = GPIO_PIN_CNF_DIR_Output | GPIO_PIN_CNF_INPUT_Disconnect;
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: load-driven-in-sleep P0.17 P0.18
    }
}
