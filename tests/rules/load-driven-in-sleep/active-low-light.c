// device: atmega328p
// board: PB0: { load: "status light", active: low, milliamps: 2 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = _BV(PB0);
    PORTB &= ~_BV(PB0); // finding: load-driven-in-sleep PB0 proven {{2 mA}}
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
