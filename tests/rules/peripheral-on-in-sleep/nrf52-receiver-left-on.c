// device: nrf52840_xxaa
// The receiver keeps the high-frequency clock until STOPRX; the transmitter is stopped.
#include "nrf.h"

static uint8_t line[16];

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

int main(void)
{
    NRF_UARTE1->PSEL.TXD = 6;
    NRF_UARTE1->PSEL.RXD = 8;
    NRF_UARTE1->ENABLE = UARTE_ENABLE_ENABLE_Enabled;
    NRF_UARTE1->RXD.PTR = (uint32_t)(uintptr_t)line;
    NRF_UARTE1->RXD.MAXCNT = sizeof line;
    NRF_UARTE1->TASKS_STARTRX = 1; // finding: peripheral-on-in-sleep UARTE1 proven
    NRF_UARTE0->PSEL.TXD = 5;
    NRF_UARTE0->ENABLE = UARTE_ENABLE_ENABLE_Enabled;
    NRF_UARTE0->TASKS_STARTTX = 1;
    while (NRF_UARTE0->EVENTS_ENDTX == 0)
        ;
    NRF_UARTE0->TASKS_STOPTX = 1;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: peripheral-on-in-sleep UARTE0
    }
}
