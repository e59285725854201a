// device: atmega328p
// flags: -DF_CPU=8000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        __builtin_avr_delay_cycles(16000); // finding: busy-wait-delay main() {{2 ms}} {{8 MHz}}
        sleep_mode();
    }
}
