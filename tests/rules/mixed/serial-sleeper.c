// device: atmega328p
// flags: -DF_CPU=8000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Sleeps in idle between received characters; a timer was left running by somebody.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t ready;
static volatile char got;

ISR(USART_RX_vect)
{
    got = UDR0;
    ready = 1;
}

static void put(char c)
{
    while (!(UCSR0A & _BV(UDRE0))) { // finding: polling-wait UCSR0A proven warning {{USART_UDRE_vect}}
    }
    UDR0 = c;
}

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xfc;
    PORTD |= _BV(PD0);
    ACSR = _BV(ACD);
    UBRR0 = 51;
    UCSR0B = _BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0);
    TCCR0B = _BV(CS01); // finding: peripheral-on-in-sleep TIMER0 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
        if (ready) {
            ready = 0;
            put(got);
        }
    }
}
