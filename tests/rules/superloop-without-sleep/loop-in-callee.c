// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void run(void)
{
    for (;;) { // finding: superloop-without-sleep main()
        PORTB ^= 1;
    }
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    DDRB = 1;
    run();
}
