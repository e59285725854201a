// device: atmega644p
// The line is set up where its gate was opened, and its handler comes while it is open.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

static volatile uint8_t is_sent;

ISR(USART0_TX_vect)
{
    UCSR0B = 0;
    is_sent = 1;
}

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    uint8_t has_line;

    power_all_disable();
    has_line = PINB & _BV(PB2);
    EIMSK = _BV(INT0);
    sei();
    for (;;) {
        set_sleep_mode(SLEEP_MODE_PWR_DOWN);
        sleep_mode();
        if (has_line) {
            power_usart0_enable();
        }
        PORTC ^= _BV(PC0);
        if (has_line) {
            UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
            UDR0 = 'x';
            set_sleep_mode(SLEEP_MODE_IDLE);
            while (!is_sent) {
                sleep_mode();
            }
            is_sent = 0;
            power_usart0_disable();
        }
    }
}
