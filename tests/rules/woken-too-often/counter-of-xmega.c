// device: atxmega32a4u
// A second of the real-time counter, and a minute counted: its period register holds a minute as well.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t second;

ISR(RTC_OVF_vect)
{
    second = second + 1;
}

int main(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.PER = 1023; // finding: woken-too-often RTC proven {{60 s}}
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sei();
    for (;;) {
        if (second >= 60) {
            second = 0;
            PORTC.OUTTGL = PIN0_bm;
        }
        sleep_mode();
    }
}
