#include "logger.h"

static volatile uint32_t is_ready;

void QSPI_IRQHandler(void)
{
    NRF_QSPI->EVENTS_READY = 0;
    is_ready = 1;
}

static void wait_ready(void)
{
    while (!is_ready)
        __WFE();
    is_ready = 0;
}

/* A page of flash: activate, write, deactivate, and sleep through each of them. */
void store_write(const record *page, uint32_t address)
{
    NRF_QSPI->PSEL.SCK = 19;
    NRF_QSPI->PSEL.CSN = 17;
    NRF_QSPI->PSEL.IO0 = 20;
    NRF_QSPI->PSEL.IO1 = 21;
    is_ready = 0;
    NRF_QSPI->INTENSET = QSPI_INTENSET_READY_Msk;
    NVIC_EnableIRQ(QSPI_IRQn);
    NRF_QSPI->ENABLE = 1;
    NRF_QSPI->TASKS_ACTIVATE = 1;
    wait_ready();
    NRF_QSPI->WRITE.SRC = address;
    NRF_QSPI->WRITE.DST = (uint32_t)(uintptr_t)page;
    NRF_QSPI->WRITE.CNT = RECORDS_A_PAGE * sizeof *page;
    NRF_QSPI->TASKS_WRITESTART = 1;
    wait_ready();
    NRF_QSPI->TASKS_DEACTIVATE = 1;
    NRF_QSPI->ENABLE = 0;
}
