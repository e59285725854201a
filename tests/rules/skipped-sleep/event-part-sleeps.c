// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char sending;

ISR(USARTC0_TXC_vect) { sending = 0; }
EMPTY_INTERRUPT(RTC_OVF_vect)

int main(void)
{
    RTC.PER = 1023;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    USARTC0.CTRLA = USART_TXCINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode(); // clean: skipped-sleep main()
        if (!sending) {
            sending = 1;
            USARTC0.DATA = 'x';
        }
    }
}
