// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

static volatile uint16_t ticks;

ISR(TIMER0_COMPA_vect)
{
    ticks++;
}

static void wait_ticks(uint16_t count)
{
    uint16_t start = ticks;
    while ((uint16_t)(ticks - start) < count) { // finding: busy-wait-delay wait_ticks() {{handler}}
    }
}

int main(void)
{
    TCCR0A = _BV(WGM01);
    OCR0A = 124;
    TCCR0B = _BV(CS01); // 1 MHz / 8 / 125: 1 ms
    TIMSK0 = _BV(OCIE0A);
    sei();
    for (;;) {
        wait_ticks(25);
        sleep_mode();
    }
}
