// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
again: // finding: superloop-without-sleep main()
    PORTB ^= 1;
    goto again;
}
