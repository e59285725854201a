#include "bell.h"

static uint16_t half[1] = {500};

static void pin_low(uint32_t pin)
{
    NRF_P0->OUTCLR = 1u << pin;
    NRF_P0->DIRSET = 1u << pin;
}

void bell_prepare(void)
{
    pin_low(HORN);
    pin_low(LAMP);
}

void bell_ring(void)
{
    NRF_P0->OUTSET = 1u << LAMP;
    NRF_PWM0->PSEL.OUT[0] = HORN;
    NRF_PWM0->ENABLE = 1;
    NRF_PWM0->COUNTERTOP = 1000;
    NRF_PWM0->SEQ[0].PTR = (uint32_t)(uintptr_t)half;
    NRF_PWM0->SEQ[0].CNT = 1;
    NRF_PWM0->TASKS_SEQSTART[0] = 1;
}

void bell_quiet(void)
{
    NRF_PWM0->EVENTS_STOPPED = 0;
    NRF_PWM0->TASKS_STOP = 1;
    NRF_PWM0->ENABLE = 0;
    NRF_PWM0->PSEL.OUT[0] = 0xFFFFFFFF;
    NRF_P0->OUTCLR = 1u << LAMP;
}
