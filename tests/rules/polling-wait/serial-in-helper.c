// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void put(char c)
{
    loop_until_bit_is_set(UCSR0A, UDRE0); // finding: polling-wait UCSR0A proven {{USART_UDRE_vect}}
    UDR0 = c;
}

static void text(const char *s)
{
    while (*s) {
        put(*s++);
    }
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    UCSR0B = _BV(TXEN0);
    for (;;) {
        text("ok");
        sleep_mode();
    }
}
