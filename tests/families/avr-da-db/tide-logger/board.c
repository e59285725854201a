#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "board.h"

static volatile uint8_t is_due;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    is_due = 1;
}

/* One setting, sent to all pins of all ports; then the switch of the sensor's supply becomes an output. */
static void pins_init(void)
{
    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc;
    PORTA.PINCTRLUPD = 0xFF;
    PORTB.PINCTRLUPD = 0xFF;
    PORTC.PINCTRLUPD = 0xFF;
    PORTD.PINCTRLUPD = 0xFF;
    PORTE.PINCTRLUPD = 0xFF;
    PORTF.PINCTRLUPD = 0xFF;

    PORTC.OUTCLR = SENSOR_SUPPLY_bm;
    PORTC.DIRSET = SENSOR_SUPPLY_bm;
}

void board_init(void)
{
    _PROTECTED_WRITE(CLKCTRL.OSCHFCTRLA, CLKCTRL_FRQSEL_1M_gc);
    pins_init();

    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm;
}

void board_sleep_until_next(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        cli();
        if (is_due) {
            break;
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
    is_due = 0;
    sei();
}
