#include "board.h"

#define SENSOR 0x28u

static volatile uint32_t is_done;
static volatile uint32_t has_failed;

void SPIM0_SPIS0_TWIM0_TWIS0_SPI0_TWI0_IRQHandler(void)
{
    if (NRF_TWIM0->EVENTS_ERROR) {
        NRF_TWIM0->EVENTS_ERROR = 0;
        has_failed = 1;
        NRF_TWIM0->TASKS_STOP = 1;
    }
    if (NRF_TWIM0->EVENTS_STOPPED) {
        NRF_TWIM0->EVENTS_STOPPED = 0;
        is_done = 1;
    }
}

int sensor_read(uint8_t *bytes, uint32_t count)
{
    is_done = 0;
    has_failed = 0;
    NRF_TWIM0->PSEL.SCL = PIN_SCL;
    NRF_TWIM0->PSEL.SDA = PIN_SDA;
    NRF_TWIM0->FREQUENCY = 0x01980000;
    NRF_TWIM0->ADDRESS = SENSOR;
    NRF_TWIM0->SHORTS = TWIM_SHORTS_LASTRX_STOP_Msk;
    NRF_TWIM0->INTENSET = TWIM_INTENSET_STOPPED_Msk | TWIM_INTENSET_ERROR_Msk;
    NVIC_EnableIRQ(SPIM0_SPIS0_TWIM0_TWIS0_SPI0_TWI0_IRQn);
    NRF_TWIM0->ENABLE = TWIM_ENABLE_ENABLE_Enabled;
    NRF_TWIM0->RXD.PTR = (uint32_t)(uintptr_t)bytes;
    NRF_TWIM0->RXD.MAXCNT = count;
    NRF_TWIM0->TASKS_STARTRX = 1;
    while (!is_done)
        __WFE();
    NRF_TWIM0->ENABLE = 0;
    return !has_failed;
}
