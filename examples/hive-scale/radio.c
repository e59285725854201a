#include "radio.h"

#include "board.h"
#include "power.h"

#define BAUD 4800UL
#define DIVISOR (F_CPU / (8UL * BAUD) - 1)
#define ANSWER_NAPS 16

static volatile uint8_t command;

ISR(USART_RX_vect)
{
    command = UDR0;
}

void radio_init(void)
{
    UBRR0 = DIVISOR;
    UCSR0A = 1 << U2X0;
    UCSR0C = (1 << UCSZ01) | (1 << UCSZ00);
    UCSR0B = (1 << RXCIE0) | (1 << RXEN0) | (1 << TXEN0);
}

static void send(uint8_t byte)
{
    while (!(UCSR0A & (1 << UDRE0)))
        ;
    UDR0 = byte;
}

void radio_send(const struct report *report)
{
    const uint8_t *bytes = (const uint8_t *)report;
    for (uint8_t i = 0; i < sizeof *report; i++)
        send(bytes[i]);

    for (uint8_t i = 0; i < ANSWER_NAPS && command == 0; i++)
        doze();
}

uint8_t radio_command(void)
{
    uint8_t last = command;
    command = 0;
    return last;
}
