// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    DDRB = 0xff;
    while (1) { // finding: superloop-without-sleep main() proven warning
        PORTB = PIND;
    }
}
