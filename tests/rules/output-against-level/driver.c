// device: atmega328p
// board: PB1: { driven: low }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTB = 0xff;
    DDRB = 0xff; // finding: output-against-level PB1 proven error {{drives it low}}
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
