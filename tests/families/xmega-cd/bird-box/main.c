// device: atxmega32c4
// flags: -DF_CPU=2000000UL -Wall
// A counter in a bird box: each bird that crosses the barrier wakes it; every tenth is shown by a flash. It sleeps with everything stopped.
#include <avr/interrupt.h>
#include <avr/io.h>

#include "box.h"

int main(void)
{
    uint16_t shown = 0;

    pins_prepare();
    PMIC.CTRL = PMIC_MEDLVLEN_bm | PMIC_LOLVLEN_bm;
    sei();
    for (;;) {
        cli();
        if (visits_now() < shown + 10) {
            sleep_deep();
            continue;
        }
        sei();
        shown += 10;
        lamp_flash(1);
    }
}
