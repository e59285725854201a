#include "clock.h"

#include <avr/interrupt.h>
#include <avr/io.h>

#define SECONDS_OF_A_MINUTE 60

EMPTY_INTERRUPT(RTC_OVF_vect)

void clock_init(void)
{
    /* A thousand and twenty-four ticks a second from the low-power oscillator, divided down to one. */
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    while (RTC.STATUS & RTC_SYNCBUSY_bm)
        ;
    RTC.PER = SECONDS_OF_A_MINUTE - 1;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1024_gc;
}
