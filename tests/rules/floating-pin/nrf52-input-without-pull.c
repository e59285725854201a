// device: nrf52840_xxaa
// Both ports, by their own registers. What is only an output, or never touched, is cut off its buffer after reset.
#include "nrf.h"

#define BUTTON 13u
#define DOOR 5u

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    NRF_P0->PIN_CNF[BUTTON] = GPIO_PIN_CNF_INPUT_Connect << GPIO_PIN_CNF_INPUT_Pos; // finding: floating-pin P0.13 proven
    NRF_P1->PIN_CNF[DOOR] = 0; // finding: floating-pin P1.05 proven
    NRF_P1->DIRSET = 1u << 6;
    for (;;) {
        __WFE();
    }
}
