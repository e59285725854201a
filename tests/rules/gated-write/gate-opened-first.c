// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include <avr/power.h>

int main(void)
{
    power_all_disable();
    power_usart0_enable();
    UBRR0L = 12;
    UCSR0B = _BV(TXEN0);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
