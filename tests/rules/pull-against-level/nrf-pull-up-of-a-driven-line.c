// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// board: P0.11: { driven: low }
// board: P0.12: { pull: down, ohms: 100000 }
#include "nrf52.h"

#define PULL_DOWN (1u << 2)
#define PULL_UP (3u << 2)

static const struct {
    uint8_t pin;
    uint32_t setting;
} inputs[] = {
    {11, PULL_UP},
    {12, PULL_DOWN},
    {13, PULL_UP},
};

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

int main(void)
{
    for (uint32_t i = 0; i < sizeof inputs / sizeof inputs[0]; i++)
        NRF_P0->PIN_CNF[inputs[i].pin] = inputs[i].setting; // finding: pull-against-level P0.11 proven warning
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: pull-against-level P0.12
    }
}
