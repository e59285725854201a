// device: atxmega32c4
// The 44-pin C part has a second serial port on port C, with its own bit in the power reduction register.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    PR.PRPC = PR_USART1_bm;
    USARTC0.BAUDCTRLA = 12;
    USARTC1.BAUDCTRLA = 12; // finding: gated-write USARTC1.BAUDCTRLA proven
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
