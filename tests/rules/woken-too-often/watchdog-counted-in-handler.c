// device: attiny85
// The watchdog's handler counts eight of its seconds, although it has a period of eight.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t seconds, is_due;

ISR(WDT_vect)
{
    if (++seconds == 8) {
        seconds = 0;
        is_due = 1;
    }
}

int main(void)
{
    WDTCR |= _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1); // finding: woken-too-often WDT proven warning {{8.192 s}}
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        if (is_due) {
            is_due = 0;
            PINB = _BV(PINB1);
        }
    }
}
