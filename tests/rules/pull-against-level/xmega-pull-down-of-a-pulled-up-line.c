// device: atxmega128a3u
// board: PE0: { pull: up, ohms: 2200 }
// board: PE1: { pull: up, ohms: 2200 }
// Before it starts, the two-wire bus is parked by one write to both control registers.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    PORTCFG.MPCMASK = PIN0_bm | PIN1_bm;
    PORTE.PIN0CTRL = PORT_OPC_PULLDOWN_gc; // finding: pull-against-level PE0 PE1 proven
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
