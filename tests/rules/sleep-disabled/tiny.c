// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCR |= _BV(WDIE);
    sei();
    MCUCR = _BV(SM1);
    for (;;) {
        __asm__ __volatile__("sleep"); // finding: sleep-disabled SLEEP proven error {{MCUCR}}
    }
}
