// device: atmega328p
// flags: -DF_CPU=8000000UL
// The watchdog switched on and off through its timed sequence, once through the library.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint8_t rounds;

ISR(WDT_vect)
{
    rounds++;
}

static void watchdog_interrupt(uint8_t period)
{
    uint8_t value = _BV(WDIE) | (period & 7) | ((period & 8) ? _BV(WDP3) : 0);
    cli();
    wdt_reset();
    MCUSR &= ~_BV(WDRF);
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = value;
    sei();
}

int main(void)
{
    wdt_disable();
    PORTB = PORTC = PORTD = 0xFF;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    watchdog_interrupt(9);
    sleep_mode(); // state: WDTCSR = 0b0110_0001
    watchdog_interrupt(3);
    sleep_mode(); // state: WDTCSR = 0b0100_0011
    wdt_disable();
    PORTB = 0x0F;
    sleep_mode(); // state: WDTCSR.WDIE = 0, WDTCSR.WDE = 0, PORTB = 0x0f
    for (;;)
        ;
}
