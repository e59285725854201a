#include "reader.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#define BAUD 4800UL

static const uint8_t *volatile next_byte;
static volatile uint8_t bytes_left;
static volatile uint8_t is_sent;

ISR(USART0_UDRE_vect)
{
    UDR0 = *next_byte++;
    if (--bytes_left == 0)
        UCSR0B = _BV(TXCIE0) | _BV(TXEN0);
}

ISR(USART0_TX_vect)
{
    is_sent = 1;
}

void reader_init(void)
{
    power_usart0_enable();
    UBRR0 = F_CPU / (8 * BAUD) - 1;
    UCSR0A = _BV(U2X0);
    power_usart0_disable();
}

void reader_send(const uint16_t *values, uint8_t count)
{
    power_usart0_enable();
    next_byte = (const uint8_t *)values;
    bytes_left = (uint8_t)(2 * count);
    is_sent = 0;
    UCSR0B = _BV(UDRIE0) | _BV(TXCIE0) | _BV(TXEN0);
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
    UCSR0B = 0;
    power_usart0_disable();
}
