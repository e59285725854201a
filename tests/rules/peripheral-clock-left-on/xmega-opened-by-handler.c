// device: atxmega32a4u
// The handler opens a gate for a measurement that is no longer made.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTD_INT0_vect)
{
    PR.PRPA &= (uint8_t)~PR_ADC_bm; // finding: peripheral-clock-left-on ADCA proven warning
}

int main(void)
{
    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_RTC_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = 0x7F;
    PR.PRPD = 0x7F;
    PR.PRPE = 0x7F;
    PR.PRPF = 0x7F;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
