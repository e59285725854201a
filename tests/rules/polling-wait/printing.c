// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include <stdio.h>

static int put(char c, FILE *stream)
{
    (void)stream;
    loop_until_bit_is_set(UCSR0A, UDRE0); // finding: polling-wait UCSR0A proven warning
    UDR0 = c;
    return 0;
}

static FILE port = FDEV_SETUP_STREAM(put, NULL, _FDEV_SETUP_WRITE);

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    UCSR0B = _BV(TXEN0);
    stdout = &port;
    for (;;) {
        printf("%u\n", PINB); // related: polling-wait {{put()}}
        sleep_mode();
    }
}
