// device: attiny85
// flags: -DF_CPU=1000000UL
// The same 16 ms, slept through.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t is_over;

ISR(WDT_vect)
{
    is_over = 1;
}

static void wait_16_milliseconds(void)
{
    is_over = 0;
    WDTCR |= _BV(WDIE);
    do {
        cli();
        if (!is_over) {
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
        }
        sei();
    } while (!is_over);
}

int main(void)
{
    DDRB = 0x1F;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        wait_16_milliseconds();
        PORTB ^= _BV(PB0);
    }
}
