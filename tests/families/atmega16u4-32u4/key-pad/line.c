#include "line.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#define BAUD 9600UL

static volatile uint8_t is_sent;

ISR(USART1_TX_vect)
{
    is_sent = 1;
}

void line_init(void)
{
    power_usart1_enable();
    UBRR1 = F_CPU / (8 * BAUD) - 1;
    UCSR1A = _BV(U2X1);
    power_usart1_disable();
}

void line_send(uint8_t byte)
{
    power_usart1_enable();
    UCSR1B = _BV(TXCIE1) | _BV(TXEN1);
    is_sent = 0;
    UDR1 = byte;
    set_sleep_mode(SLEEP_MODE_IDLE);
    cli();
    while (!is_sent) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    UCSR1B = 0;
    power_usart1_disable();
}
