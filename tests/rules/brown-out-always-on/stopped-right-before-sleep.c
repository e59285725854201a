// device: atmega328p
// option: EFUSE.BODLEVEL = 6
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK0 = _BV(PCINT1);
    PCICR = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    // clean: brown-out-always-on BOD
    for (;;) {
        cli();
        sleep_enable();
        sleep_bod_disable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
}
