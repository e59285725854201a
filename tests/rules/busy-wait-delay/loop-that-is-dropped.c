// device: atmega328p
// flags: -DF_CPU=1000000UL
// A compiler that optimises drops a loop whose counter nobody looks at; a barrier keeps it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        for (uint16_t i = 0; i < 50000; i++)
            ;
        for (uint16_t i = 0; i < 50000; i++) // finding: busy-wait-delay main() proven warning
            __asm__ volatile("nop");
        sleep_mode();
    }
}
