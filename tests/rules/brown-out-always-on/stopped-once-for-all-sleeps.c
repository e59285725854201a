// device: atmega328p
// option: EFUSE.BODLEVEL = 5
// The detector is switched off once, at start-up. Its switch falls by itself after three clock cycles (DS40002061, brown-out disable), so
// that no sleep of the loop finds it open.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    sleep_enable();
    sleep_bod_disable();
    sleep_cpu();
    for (;;) {
        sleep_cpu(); // finding: brown-out-always-on BOD proven note
    }
}
