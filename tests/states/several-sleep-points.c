// device: atmega328p
// flags: -DF_CPU=8000000UL
// A short sleep, a long one and a last one, each with its own pins.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t overflows;

ISR(TIMER0_OVF_vect)
{
    overflows++;
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    DDRB = 0x0F;
    TCCR0B = _BV(CS02);
    TIMSK0 = _BV(TOIE0);
    sei();
    for (uint8_t i = 0; i < 4; i++) {
        PORTB = 1 << i;
        set_sleep_mode(SLEEP_MODE_IDLE);
        sleep_mode(); // state: DDRB = 0x0f, PORTB = 0b0000_????, TIMSK0 = 0x01
    }
    TIMSK0 = 0;
    TCCR0B = 0;
    cli();
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP1);
    sei();
    PORTB = 0x30;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_mode(); // state: PORTB = 0x30, TIMSK0 = 0, TCCR0B = 0, WDTCSR = 0b0100_0010
    cli();
    WDTCSR = _BV(WDCE) | _BV(WDE);
    WDTCSR = 0;
    PORTB = 0;
    DDRB = 0;
    sleep_mode(); // state: PORTB = 0, DDRB = 0, WDTCSR = 0
    for (;;)
        ;
}
