#include "timekeeper.h"

#include "saml22.h"

static volatile uint8_t has_ticked;
static uint32_t seconds;

void RTC_Handler(void)
{
    RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_PER7;
    has_ticked = 1;
}

// 1024 counts a second out of the crystal; the slowest periodic interrupt of the prescaler comes once a second.
void timekeeper_start(void)
{
    OSC32KCTRL->XOSC32K.reg = OSC32KCTRL_XOSC32K_STARTUP(4) | OSC32KCTRL_XOSC32K_XTALEN | OSC32KCTRL_XOSC32K_EN32K | OSC32KCTRL_XOSC32K_EN1K
        | OSC32KCTRL_XOSC32K_RUNSTDBY | OSC32KCTRL_XOSC32K_ENABLE;
    while (!OSC32KCTRL->STATUS.bit.XOSC32KRDY)
        ;
    OSC32KCTRL->RTCCTRL.reg = OSC32KCTRL_RTCCTRL_RTCSEL(4);
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_SWRST;
    while (RTC->MODE0.SYNCBUSY.reg)
        ;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_PRESCALER(11);
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_PER7;
    NVIC_EnableIRQ(RTC_IRQn);
    RTC->MODE0.CTRLA.reg |= RTC_MODE0_CTRLA_ENABLE;
}

int timekeeper_has_ticked(void)
{
    return has_ticked;
}

int timekeeper_take(void)
{
    int ticked = has_ticked;

    has_ticked = 0;
    if (ticked)
        seconds++;
    return ticked;
}

uint32_t timekeeper_seconds(void)
{
    return seconds;
}
