// device: atmega328p
// board: PB1: { driven: high }
// board: PB2: { pull: up, ohms: 4700 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTB = 0xff; // clean: output-against-level PB1 // clean: output-against-level PB2
    DDRB = 0xff;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
