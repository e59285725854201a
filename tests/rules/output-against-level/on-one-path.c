// device: atmega328p
// board: PD4: { driven: high }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    if (PINB & 1) {
        DDRD = _BV(PD4); // finding: output-against-level PD4 possible note
    }
    for (;;) {
        sleep_mode();
    }
}
