// device: atmega328p
// flags: -DF_CPU=16000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

// 8000 cycles are 8 ms at 1 MHz, but half a millisecond at 16 MHz.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        __builtin_avr_delay_cycles(8000);
        sleep_mode();
    }
}
