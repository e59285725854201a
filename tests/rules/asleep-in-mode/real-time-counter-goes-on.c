// device: atxmega32e5
// The deepest mode in which the real-time counter goes on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_OVF_vect)
{
}

int main(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.PER = 1023;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;  // clean: asleep-in-mode RTC
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    sei();
    SLEEP.CTRL = SLEEP_SMODE_PSAVE_gc | SLEEP_SEN_bm;
    for (;;) {
        sleep_cpu();
    }
}
