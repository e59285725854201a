// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        _delay_ms(5); // finding: busy-wait-delay main() proven warning {{5 ms}} {{1 MHz}}
        sleep_mode();
    }
}
