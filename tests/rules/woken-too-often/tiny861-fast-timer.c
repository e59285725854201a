// device: attiny861
// flags: -DF_CPU=1000000UL
// The fast timer's top makes four milliseconds of the clock undivided by much; its divider has room for a second.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t rounds;

ISR(TIMER1_OVF_vect)
{
    rounds++;
}

int main(void)
{
    DDRA = 1;
    OCR1C = 249; // finding: woken-too-often TIMER1
    TIMSK = _BV(TOIE1);
    TCCR1B = _BV(CS12) | _BV(CS10);
    sei();
    for (;;) {
        cli();
        while (rounds < 100) {
            sleep_enable();
            sei();
            sleep_cpu();
            cli();
        }
        rounds = 0;
        sei();
        PORTA ^= 1;
    }
}
