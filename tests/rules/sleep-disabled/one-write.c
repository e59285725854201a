// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        SMCR = _BV(SM1) | _BV(SE);
        __asm__ __volatile__("sleep" ::: "memory");
        SMCR = 0;
    }
}
