#include "logger.h"

static volatile uint32_t is_stopped;

void UARTE1_IRQHandler(void)
{
    if (NRF_UARTE1->EVENTS_ENDTX) {
        NRF_UARTE1->EVENTS_ENDTX = 0;
        NRF_UARTE1->TASKS_STOPTX = 1;
    }
    if (NRF_UARTE1->EVENTS_TXSTOPPED) {
        NRF_UARTE1->EVENTS_TXSTOPPED = 0;
        is_stopped = 1;
    }
}

void line_write(const record *page, uint32_t count)
{
    if (count == 0)
        return;
    is_stopped = 0;
    NRF_UARTE1->PSEL.TXD = LINE_TXD;
    NRF_UARTE1->BAUDRATE = UARTE_BAUDRATE_BAUDRATE_Baud115200;
    NRF_UARTE1->INTENSET = UARTE_INTENSET_ENDTX_Msk | UARTE_INTENSET_TXSTOPPED_Msk;
    NVIC_EnableIRQ(UARTE1_IRQn);
    NRF_UARTE1->ENABLE = UARTE_ENABLE_ENABLE_Enabled;
    NRF_UARTE1->TXD.PTR = (uint32_t)(uintptr_t)page;
    NRF_UARTE1->TXD.MAXCNT = count * sizeof *page;
    NRF_UARTE1->TASKS_STARTTX = 1;
    while (!is_stopped)
        __WFE();
    NRF_UARTE1->ENABLE = 0;
}
