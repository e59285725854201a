// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA -mcpu=cortex-m4 -Wall
// A beacon in a flower bed: every two seconds it flashes a lamp for as long as one tick of the clock, and sleeps.
#include "nrf52.h"

#define LAMP 17u

static volatile uint32_t ticks;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    (void)NRF_RTC0->EVENTS_TICK;
    ticks++;
}

static void clock_start(void)
{
    CLOCK_LFCLKSRC = 1;
    CLOCK_EVENTS_LFCLKSTARTED = 0;
    CLOCK_TASKS_LFCLKSTART = 1;
    while (CLOCK_EVENTS_LFCLKSTARTED == 0)
        ;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
}

int main(void)
{
    POWER_TASKS_CONSTLAT = 1; // finding: shallow-sleep proven {{low-power}}
    CLOCK_TASKS_HFCLKSTART = 1; // finding: oscillator-kept-on HFXO proven
    TIMER1_TASKS_START = 1; // finding: peripheral-on-in-sleep TIMER1 proven
    NRF_P0->OUTCLR = 1u << LAMP;
    NRF_P0->PIN_CNF[LAMP] = GPIO_PIN_CNF_DIR_Output | GPIO_PIN_CNF_INPUT_Disconnect;
    NRF_P0->PIN_CNF[5] = 0; // finding: floating-pin P0.05 proven
    clock_start();
    for (;;) {
        if ((ticks & 15) == 0)
            NRF_P0->OUTSET = 1u << LAMP;
        else
            NRF_P0->OUTCLR = 1u << LAMP;
        __WFE(); // finding: full-power-regulator DCDC board-dependent
    }
}
