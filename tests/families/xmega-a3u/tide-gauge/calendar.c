#include "calendar.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define TEN_MINUTES 600ul

static volatile uint8_t is_due;

ISR(RTC32_OVF_vect)
{
    is_due = 1;
}

/* Starts the domain anew: the crystal at one pulse a second, then the counter. */
static void start_domain(void)
{
    VBAT.CTRL = VBAT_ACCEN_bm;
    CCP = CCP_IOREG_gc;
    VBAT.CTRL = VBAT_RESET_bm;
    VBAT.CTRL = VBAT_ACCEN_bm | VBAT_XOSCSEL_bm;
    VBAT.CTRL = VBAT_ACCEN_bm | VBAT_XOSCSEL_bm | VBAT_XOSCEN_bm;
    RTC32.PER = TEN_MINUTES - 1;
    RTC32.CTRL = RTC32_ENABLE_bm;
}

void calendar_init(void)
{
    start_domain();
    RTC32.INTCTRL = RTC32_OVFINTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sei();
}

void calendar_wait(void)
{
    cli();
    while (!is_due) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    is_due = 0;
    sei();
}

void calendar_keep_highest(uint16_t level)
{
    uint16_t highest = (uint16_t)(VBAT.BACKUP0 | (VBAT.BACKUP1 << 8));

    if (level <= highest)
        return;
    VBAT.BACKUP0 = (uint8_t)level;
    VBAT.BACKUP1 = (uint8_t)(level >> 8);
}
