// device: avr128da48
// flags: -DF_CPU=4000000UL -Wall
// Beeps when the lid of a beehive is left open; a reed contact tells.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

#define LID_bm PIN5_bm
#define BEEPER_bm PIN6_bm

static volatile uint8_t is_open;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
}

ISR(PORTD_PORT_vect)
{
    PORTD.INTFLAGS = LID_bm;
    is_open = 1;
}

int main(void)
{
    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc; // finding: floating-pin PC4 proven warning
    PORTA.PINCTRLUPD = 0xFF;
    PORTB.PINCTRLUPD = 0xFF;
    PORTC.PINCTRLUPD = 0xEF;
    PORTD.PINCTRLUPD = 0xFF;
    PORTE.PINCTRLUPD = 0xFF;
    PORTF.PINCTRLUPD = 0xFF;
    PORTA.DIRSET = BEEPER_bm;
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;

    CLKCTRL.OSCHFCTRLA = CLKCTRL_FRQSEL_1M_gc; // finding: locked-write CLKCTRL.OSCHFCTRLA proven warning
    _PROTECTED_WRITE(SLPCTRL.VREGCTRL, SLPCTRL_PMODE_FULL_gc);
    VREF.ACREF = VREF_ALWAYSON_bm | VREF_REFSEL_2V048_gc; // finding: peripheral-on-in-sleep ACREF proven warning

    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    /* The counter of the time since the last opening goes on in standby only. */
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: full-power-regulator VREG proven warning
        sleep_disable();
        if (is_open) {
            PORTA.OUTSET = BEEPER_bm;
            _delay_ms(30); // finding: busy-wait-delay main() proven warning
            PORTA.OUTCLR = BEEPER_bm;
            is_open = 0;
        }
    }
}

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
}
