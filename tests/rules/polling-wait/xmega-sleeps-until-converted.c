// device: atxmega32a4u
// The test of the flag guards a sleep: the loop goes round once for each wake-up.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t is_converted;
static uint16_t level;

ISR(ADCA_CH0_vect)
{
    is_converted = 1;
}

EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    ADCA.CTRLA = ADC_ENABLE_bm;
    ADCA.CH0.INTCTRL = ADC_CH_INTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    for (;;) {
        is_converted = 0;
        ADCA.CH0.CTRL = ADC_CH_START_bm;
        cli();
        while (!is_converted) {
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
            cli();
        }
        sei();
        level = ADCA.CH0.RES;
    }
}
