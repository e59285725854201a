// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.PER = 1023;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
