// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// The sleep before the loop ends with the interrupt: the loop itself never sleeps.
EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    sleep_mode();
    for (;;) { // finding: superloop-without-sleep main()
        PORTB ^= 1;
    }
}
