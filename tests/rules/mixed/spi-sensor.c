// device: atmega328p
// flags: -DF_CPU=8000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// A sensor on the serial bus, read once per timer tick; the bus stays on while the CPU idles.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t last;

EMPTY_INTERRUPT(TIMER1_COMPA_vect)

static uint8_t exchange(uint8_t out)
{
    SPDR = out;
    while (bit_is_clear(SPSR, SPIF)) // finding: polling-wait SPSR proven warning {{SPI_STC_vect}}
        continue;
    return SPDR;
}

int main(void)
{
    DDRB = 0xef;
    PORTB = _BV(PB2) | _BV(PB4);
    DDRC = 0xff;
    DDRD = 0xff;
    ACSR = _BV(ACD);
    SPCR = _BV(SPE) | _BV(MSTR); // finding: peripheral-on-in-sleep SPI proven warning
    OCR1A = 31249;
    TCCR1B = _BV(WGM12) | _BV(CS12);
    TIMSK1 = _BV(OCIE1A);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        PORTB &= (uint8_t)~_BV(PB2);
        exchange(0x9f);
        last = exchange(0);
        PORTB |= _BV(PB2);
        sleep_mode();
    }
}
