#include "weir.h"

#include <avr/interrupt.h>
#include <avr/io.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

void clock_prepare(uint16_t seconds)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    while (RTC.STATUS & RTC_SYNCBUSY_bm)
        ;
    RTC.PER = seconds - 1;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1024_gc;
}
