// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TCC4_OVF_vect)
EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    TCC4.CTRLA = TC_CLKSEL_DIV1_gc; // finding: asleep-in-mode TCC4 proven warning {{TCC4_OVF_vect}}
    TCC4.INTCTRLA = TC_OVFINTLVL_LO_gc;
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
