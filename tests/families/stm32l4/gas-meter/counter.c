#include "meter.h"

#include "stm32l4xx.h"

#define PULSES_A_LITRE 10u

static volatile uint32_t rounds;

void LPTIM1_IRQHandler(void)
{
    LPTIM1->ICR = LPTIM_ICR_ARRMCF;
    rounds++;
}

// The timer counts pulses from outside, so that it needs no clock of ours.
void counter_start(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_LPTIM1EN;
    LPTIM1->CFGR = LPTIM_CFGR_CKSEL;
    LPTIM1->IER = LPTIM_IER_ARRMIE;
    LPTIM1->CR = LPTIM_CR_ENABLE;
    LPTIM1->ARR = 9999;
    LPTIM1->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(LPTIM1_IRQn);
}

uint32_t counter_litres(void)
{
    return (rounds * 10000u + LPTIM1->CNT) / PULSES_A_LITRE;
}
