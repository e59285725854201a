#include "hour.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint16_t hours;

ISR(RTC_OVF_vect)
{
    hours++;
}

void hour_init(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    while (RTC.STATUS & RTC_SYNCBUSY_bm)
        ;
    RTC.PER = 3599;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1024_gc;
}
