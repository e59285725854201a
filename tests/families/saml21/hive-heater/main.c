// device: saml21j18b
// flags: -D__SAML21J18B__ -Wall
// Warms a beehive's brood in frosty nights: every half minute the clock wakes it, it looks at a thermistor, and switches a heater.
#include "board.h"
#include "saml21.h"
#include "thermistor.h"

#define FROST 2900u
#define HALF_MINUTE (30u * 1024u)

static volatile uint8_t is_due;

void RTC_Handler(void)
{
    RTC->MODE0.INTFLAG.reg = RTC_MODE0_INTFLAG_CMP0;
    is_due = 1;
}

// The clock counts 1024 a second, from the crystal, which runs for it in standby.
static void clock_start(void)
{
    OSC32KCTRL->XOSC32K.reg = OSC32KCTRL_XOSC32K_STARTUP(4) | OSC32KCTRL_XOSC32K_XTALEN | OSC32KCTRL_XOSC32K_EN1K | OSC32KCTRL_XOSC32K_ONDEMAND;
    OSC32KCTRL->XOSC32K.bit.ENABLE = 1;
    OSC32KCTRL->RTCCTRL.reg = OSC32KCTRL_RTCCTRL_RTCSEL(4);
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_SWRST;
    while (RTC->MODE0.SYNCBUSY.reg)
        ;
    RTC->MODE0.CTRLA.reg = RTC_MODE0_CTRLA_MATCHCLR | RTC_MODE0_CTRLA_PRESCALER(1);
    RTC->MODE0.COMP.reg = HALF_MINUTE - 1;
    RTC->MODE0.INTENSET.reg = RTC_MODE0_INTENSET_CMP0;
    NVIC_EnableIRQ(RTC_IRQn);
    RTC->MODE0.CTRLA.reg |= RTC_MODE0_CTRLA_ENABLE;
}

int main(void)
{
    board_park();
    board_power();
    thermistor_init();
    clock_start();
    for (;;) {
        __disable_irq();
        if (!is_due) {
            __DSB();
            __WFI();
        }
        __enable_irq();
        if (is_due) {
            is_due = 0;
            heater_set(thermistor_read() > FROST);
        }
    }
}
