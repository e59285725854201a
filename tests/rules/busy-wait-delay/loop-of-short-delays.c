// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

// A loop that only waits is one wait.
static void wait_ms(uint8_t count)
{
    while (count--) { // finding: busy-wait-delay wait_ms() {{30 ms}}
        _delay_ms(1);
    }
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        wait_ms(30);
        sleep_mode();
    }
}
