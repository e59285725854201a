// device: atxmega64d3
// flags: -DF_CPU=2000000UL -Wall
// A gauge at a weir: every five minutes the level is read and told by a modem; a call pulls a pin and gets the last one at once.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "weir.h"

static void tell(uint16_t level)
{
    static uint8_t text[4];

    text[0] = (uint8_t)('0' + level / 1000 % 10);
    text[1] = (uint8_t)('0' + level / 100 % 10);
    text[2] = (uint8_t)('0' + level / 10 % 10);
    text[3] = '\n';
    modem_write(text, sizeof text);
}

int main(void)
{
    uint16_t level = 0;

    pins_prepare();
    clock_prepare(300);
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    sei();
    for (;;) {
        set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
        sleep_mode();
        if (!pins_take_call())
            level = level_read();
        tell(level);
    }
}
