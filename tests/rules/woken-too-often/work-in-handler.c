// device: atxmega32a4u
// The handler sends a byte at each overflow; what it counts besides does not matter.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t minute;

ISR(RTC_OVF_vect)
{
    USARTC0.DATA = 'x';
    minute++;
}

int main(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.PER = 1023; // clean: woken-too-often RTC
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sei();
    for (;;) {
        sleep_mode();
        if (minute >= 60) {
            minute = 0;
            PORTC.OUTTGL = PIN0_bm;
        }
    }
}
