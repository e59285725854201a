#include "board.h"

static volatile uint32_t is_stopped;

void UARTE0_UART0_IRQHandler(void)
{
    if (NRF_UARTE0->EVENTS_ENDTX) {
        NRF_UARTE0->EVENTS_ENDTX = 0;
        NRF_UARTE0->TASKS_STOPTX = 1;
    }
    if (NRF_UARTE0->EVENTS_TXSTOPPED) {
        NRF_UARTE0->EVENTS_TXSTOPPED = 0;
        is_stopped = 1;
    }
}

void line_write(const uint8_t *bytes, uint32_t count)
{
    is_stopped = 0;
    NRF_UARTE0->PSEL.TXD = PIN_TXD;
    NRF_UARTE0->BAUDRATE = UARTE_BAUDRATE_BAUDRATE_Baud9600;
    NRF_UARTE0->INTENSET = UARTE_INTENSET_ENDTX_Msk | UARTE_INTENSET_TXSTOPPED_Msk;
    NVIC_EnableIRQ(UARTE0_UART0_IRQn);
    NRF_UARTE0->ENABLE = UARTE_ENABLE_ENABLE_Enabled;
    NRF_UARTE0->TXD.PTR = (uint32_t)(uintptr_t)bytes;
    NRF_UARTE0->TXD.MAXCNT = count;
    NRF_UARTE0->TASKS_STARTTX = 1;
    while (!is_stopped)
        __WFE();
    NRF_UARTE0->ENABLE = 0;
}
