#include "keys.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t came;
static volatile uint8_t last;

ISR(PORTK_INT0_vect)
{
    uint8_t down = (uint8_t)~PORTK.IN;
    uint8_t key = 0;

    while (key < 7 && (down & 1 << key) == 0)
        key++;
    last = key;
    came |= KEY_CAME;
}

ISR(RTC_OVF_vect)
{
    came |= TICK_CAME;
}

void keys_init(void)
{
    /* All eight keys at once: pulled up, any edge. */
    PORTCFG.MPCMASK = 0xFF;
    PORTK.PIN0CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTK.INT0MASK = 0xFF;
    PORTK.INTCTRL = PORT_INT0LVL_LO_gc;

    CLK.RTCCTRL = CLK_RTCSRC_ULP_gc | CLK_RTCEN_bm;
    RTC.PER = 1023;
    RTC.CTRL = RTC_PRESCALER_DIV1_gc;
    RTC.INTCTRL = RTC_OVFINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    sei();
}

uint8_t keys_wait(void)
{
    uint8_t what;

    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    cli();
    while (!came) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    what = came;
    came = 0;
    sei();
    return what;
}

uint8_t keys_last(void)
{
    return last;
}
