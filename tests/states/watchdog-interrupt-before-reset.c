// device: atmega328p
// flags: -DF_CPU=1000000UL
// With interrupt and reset both enabled the watchdog interrupts once and clears its interrupt enable; the program sets it anew.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint8_t seen;

ISR(WDT_vect)
{
    seen = WDTCSR & _BV(WDIE) ? 2 : 1;
}

int main(void)
{
    DDRB = 0xFF;
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDE) | _BV(WDP2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    sleep_mode(); // state: DDRB = 0xff, WDTCSR = 0b??00_1100
    PORTB = seen;
    DDRC = WDTCSR;
    WDTCSR |= _BV(WDIE);
    wdt_reset();
    for (;;) {
        sleep_mode(); // state: PORTB = 0x01, DDRC = 0b?000_1100
        WDTCSR |= _BV(WDIE);
        wdt_reset();
    }
}
