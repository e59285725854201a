// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include <avr/power.h>

int main(void)
{
    power_all_disable();
    UBRR0L = 12; // finding: gated-write UBRR0L UCSR0B proven warning
    UCSR0B = _BV(TXEN0);
    power_usart0_enable();
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
