// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PRR = (uint8_t)~_BV(PRUSART0);
    UCSR0B = _BV(TXEN0);
    UDR0 = 'x';
    // clean: peripheral-clock-left-on SPI
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
