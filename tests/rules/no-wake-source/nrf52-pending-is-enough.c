// device: nrf52832_xxaa
// With SEVONPEND an interrupt wakes that the interrupt controller does not let through: no handler is needed.
#include "nrf.h"

int main(void)
{
    SCB->SCR = SCB_SCR_SEVONPEND_Msk;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: no-wake-source SLEEP
        NRF_RTC0->EVENTS_TICK = 0;
        NVIC_ClearPendingIRQ(RTC0_IRQn);
    }
}
