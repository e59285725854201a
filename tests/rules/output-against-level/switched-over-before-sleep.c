// device: atmega328p
// board: PD3: { pull: up, ohms: 2200 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRD = _BV(PD3);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        PORTD &= (uint8_t)~_BV(PD3);
        PORTD |= _BV(PD3); // clean: output-against-level PD3
        sleep_mode();
    }
}
