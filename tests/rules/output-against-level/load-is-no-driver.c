// device: atmega328p
// board: PB5: { load: "lamp", active: high, milliamps: 2 }
// board: PB0: { connected: no }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
