// device: attiny85
// The mode hangs on a switch, and nothing that runs needs the lighter one.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PORTB = _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    if (PINB & _BV(PB4)) {
        set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep possible note
    }
    sei();
    for (;;) {
        sleep_mode();
    }
}
