// device: attiny85
// Eight seconds are the watchdog's longest period: a minute of them must be counted.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t naps;

ISR(WDT_vect)
{
    naps++;
}

int main(void)
{
    WDTCR |= _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDIE) | _BV(WDP3) | _BV(WDP0); // clean: woken-too-often WDT
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (naps >= 7) {
            naps = 0;
            PINB = _BV(PINB1);
        }
        sleep_mode();
    }
}
