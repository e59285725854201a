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
        _delay_loop_2(25000); // finding: busy-wait-delay main() {{12.5 ms}}
        sleep_mode();
    }
}
