// device: attiny13
// flags: -DF_CPU=1200000UL -Wall
// A moisture stick for a flower pot: blinks when the pot is dry.
#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "probe.h"

#define LAMP PB3
#define DRY 400

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    probe_init();
    PORTB = 0;
    DDRB = _BV(LAMP) | _BV(PB0) | _BV(PB1); // finding: floating-pin PB4 proven
    WDTCR = _BV(WDTIE) | _BV(WDP3); // finding: locked-write WDTCR proven
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep proven {{power-down}}
    sei();

    for (;;) {
        if (probe_read() > DRY)
            PINB = _BV(LAMP);
        else
            PORTB &= (uint8_t)~_BV(LAMP);
        sleep_mode();
    }
}
