// device: atxmega256a3bu
// The clock of the battery's domain wakes from power-save; no deeper mode keeps that.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC32_OVF_vect)
{
}

int main(void)
{
    VBAT.CTRL = VBAT_ACCEN_bm;
    VBAT.CTRL |= VBAT_XOSCEN_bm | VBAT_XOSCSEL_bm;
    RTC32.PER = 59;
    RTC32.INTCTRL = RTC32_OVFINTLVL_LO_gc;
    RTC32.CTRL = RTC32_ENABLE_bm;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    sei();

    for (;;) {
        set_sleep_mode(SLEEP_SMODE_IDLE_gc); // finding: shallow-sleep proven warning {{power-save}}
        sleep_mode();
    }
}
