// device: atmega2560
// Timers 3 and 4 are stopped by a loop over a table, after power_all_disable() has closed their gates.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

static volatile uint8_t *const clocks[] = {&TCCR3B, &TCCR4B};

int main(void)
{
    power_all_disable();
    for (uint8_t i = 0; i < sizeof clocks / sizeof clocks[0]; i++) {
        *clocks[i] = 0; // finding: gated-write TCCR3B proven
        // finding@-1: gated-write TCCR4B proven
    }
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
