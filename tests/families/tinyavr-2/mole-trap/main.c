// device: attiny1624
// flags: -DF_CPU=1250000UL -Wall
// Tells over a lamp whether a live trap has shut; once a second it looks at the strain gauge under the floor.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "gauge.h"

#define LAMP_bm PIN2_bm
#define MOLE 900

static volatile uint8_t is_second;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    is_second = 1;
}

static void rest(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        cli();
        if (is_second) {
            break;
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
    is_second = 0;
    sei();
}

int main(void)
{
    _PROTECTED_WRITE(CLKCTRL.MCLKCTRLB, CLKCTRL_PDIV_16X_gc | CLKCTRL_PEN_bm);
    for (uint8_t pin = 0; pin < 8; pin++) {
        (&PORTA.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
        (&PORTB.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
    PORTB.DIRSET = LAMP_bm;
    gauge_init();
    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;

    for (;;) {
        rest();
        if (gauge_read() > MOLE) {
            PORTB.OUTSET = LAMP_bm;
        } else {
            PORTB.OUTCLR = LAMP_bm;
        }
    }
}
