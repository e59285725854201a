#include "sender.h"

#include "pins.h"

static volatile uint8_t is_sent;

ISR(USART1_TX_vect)
{
    is_sent = 1;
}

static void send(uint8_t byte)
{
    is_sent = 0;
    UDR1 = byte;
    cli();
    while (!is_sent) {
        SMCR = 1 << SE;
        sei();
        sleep_cpu();
        SMCR = 0;
        cli();
    }
    sei();
}

/* 4800 baud from 1 MHz. The port's clock stops below idle. */
void sender_send(uint16_t value)
{
    PRR0 &= (uint8_t)~(1 << PRUSART1);
    UBRR1L = 12;
    UCSR1B = (1 << TXCIE1) | (1 << TXEN1);
    send((uint8_t)(value >> 8));
    send((uint8_t)value);
    UCSR1B = 0;
    PRR0 |= (1 << PRUSART1);
}
