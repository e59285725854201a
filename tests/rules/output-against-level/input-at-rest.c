// device: attiny85
// board: PB3: { driven: high }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        DDRB |= _BV(PB3); // The line is free now, and is ours for a moment.
        PORTB |= _BV(PB3);
        PORTB &= (uint8_t)~_BV(PB3);
        DDRB &= (uint8_t)~_BV(PB3); // clean: output-against-level PB3
        sleep_mode();
    }
}
