// device: atxmega32e5
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Two ports parked by the multi-pin way, the debug port forgotten; the clock is put on a pin and never taken away.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    PORTCFG.MPCMASK = 0xff; // finding: floating-pin PR0 PR1 proven warning
    PORTA.PIN0CTRL = PORT_ISC_INPUT_DISABLE_gc;
    PORTC.DIR = 0xff;
    PORTD.DIR = 0xff;
    PORTCFG.CLKOUT = PORTCFG_CLKOUTSEL_CLK1X_gc | 1; // finding: clock-output-on CLKOUT PC7 proven note
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
