#include "timekeeper.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

void timekeeper_init(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    while (RTC.STATUS & RTC_SYNCBUSY_bm)
        ;
    RTC.PER = 59;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1024_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    sei();
}

void timekeeper_wait(void)
{
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sleep_mode();
}
