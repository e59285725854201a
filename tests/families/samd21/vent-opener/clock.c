#include "clock.h"

#include "samd21.h"

#define CRYSTAL_GENERATOR 2u
#define TICKS_A_MINUTE (60u * 1024u)

static volatile uint32_t minutes;

void RTC_Handler(void)
{
    RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0;
    minutes++;
}

static void generators_wait(void)
{
    while (GCLK->STATUS.bit.SYNCBUSY)
        ;
}

// The crystal goes on in standby as long as the counter asks for it; the counter counts 1024 a second.
void clock_start(void)
{
    SYSCTRL->XOSC32K.reg = SYSCTRL_XOSC32K_STARTUP(6) | SYSCTRL_XOSC32K_XTALEN | SYSCTRL_XOSC32K_EN32K | SYSCTRL_XOSC32K_AAMPEN
        | SYSCTRL_XOSC32K_RUNSTDBY | SYSCTRL_XOSC32K_ONDEMAND;
    SYSCTRL->XOSC32K.bit.ENABLE = 1;

    GCLK->GENDIV.reg = GCLK_GENDIV_ID(CRYSTAL_GENERATOR) | GCLK_GENDIV_DIV(4);
    GCLK->GENCTRL.reg = GCLK_GENCTRL_ID(CRYSTAL_GENERATOR) | GCLK_GENCTRL_SRC_XOSC32K | GCLK_GENCTRL_DIVSEL | GCLK_GENCTRL_GENEN;
    generators_wait();
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_RTC | GCLK_CLKCTRL_GEN(CRYSTAL_GENERATOR) | GCLK_CLKCTRL_CLKEN;
    generators_wait();

    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_SWRST;
    while (RTC->MODE0.STATUS.bit.SYNCBUSY)
        ;
    RTC->MODE0.CTRL.reg = RTC_MODE0_CTRL_MATCHCLR;
    RTC->MODE0.COMP[0].reg = TICKS_A_MINUTE - 1;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    RTC->MODE0.CTRL.reg |= RTC_MODE0_CTRL_ENABLE;
    while (RTC->MODE0.STATUS.bit.SYNCBUSY)
        ;
}

uint32_t clock_minutes(void)
{
    return minutes;
}
