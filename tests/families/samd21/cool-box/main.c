// device: samd21e17a
// flags: -D__SAMD21E17A__ -Wall
// A medicine box that looks at its temperature every four seconds and reports by a serial line when it grows warm.
#include "report.h"
#include "samd21.h"
#include "thermistor.h"

#define WARM 2300u
#define UNUSED_A 0xDBC0FBCFu

static volatile uint8_t is_due;

void TC4_Handler(void)
{
    TC4->COUNT16.INTFLAG.reg = TC_COUNT16_INTFLAG_OVF;
    is_due = 1;
}

// Unused pads drive low: nothing can float.
static void pins_park(void)
{
    PORT->Group[0].OUTCLR.reg = UNUSED_A;
    PORT->Group[0].DIRSET.reg = UNUSED_A;
    PORT->Group[1].DIRSET.reg = 0xFFFFFFFFu;
}

// Two counts a millisecond: 32 kHz by 16, from the oscillator that never stops.
static void timer_start(void)
{
    PM->APBCMASK.bit.TC4_ = 1;
    GCLK->GENCTRL.reg = GCLK_GENCTRL_ID(3) | GCLK_GENCTRL_SRC_OSCULP32K | GCLK_GENCTRL_GENEN;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_TC4_TC5 | GCLK_CLKCTRL_GEN(3) | GCLK_CLKCTRL_CLKEN;
    while (GCLK->STATUS.bit.SYNCBUSY)
        ;
    TC4->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_MODE(0) | TC_COUNT16_CTRLA_WAVEGEN(1) | TC_COUNT16_CTRLA_PRESCALER(4) | TC_COUNT16_CTRLA_RUNSTDBY;
    TC4->COUNT16.CC[0].reg = 8191;
    TC4->COUNT16.INTENSET.reg = TC_COUNT16_INTENSET_OVF;
    NVIC_EnableIRQ(TC4_IRQn);
    TC4->COUNT16.CTRLA.bit.ENABLE = 1;
    while (TC4->COUNT16.STATUS.bit.SYNCBUSY)
        ;
}

int main(void)
{
    PM->APBAMASK.reg &= ~(PM_APBAMASK_WDT | PM_APBAMASK_RTC | PM_APBAMASK_EIC);
    PM->AHBMASK.reg &= ~(PM_AHBMASK_USB | PM_AHBMASK_DMAC);
    PM->APBBMASK.reg &= ~(PM_APBBMASK_USB | PM_APBBMASK_DMAC);
    PM->APBCMASK.reg &= ~PM_APBCMASK_ADC;
    pins_park();
    thermistor_init();
    report_init();
    timer_start();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __disable_irq();
        if (!is_due) {
            __DSB();
            __WFI();
        }
        __enable_irq();
        if (is_due) {
            uint16_t level;

            is_due = 0;
            level = thermistor_read();
            if (level > WARM)
                report_level(level);
        }
    }
}
