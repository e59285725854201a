#include "radio.h"

#include "board.h"
#include "power.h"

#define BAUD 4800UL
#define DIVISOR (F_CPU / (8UL * BAUD) - 1)
#define ANSWER_TICKS 2

static volatile uint8_t answered;
static uint8_t command;

static const uint8_t *next_byte;
static uint8_t bytes_left;
static volatile uint8_t sent;

ISR(USART_RX_vect)
{
    command = UDR0;
    answered = 1;
}

ISR(USART_UDRE_vect)
{
    UDR0 = *next_byte++;
    if (--bytes_left == 0)
        UCSR0B = (1 << TXCIE0) | (1 << TXEN0);
}

ISR(USART_TX_vect)
{
    sent = 1;
}

void radio_init(void)
{
    UBRR0 = DIVISOR;
    UCSR0A = 1 << U2X0;
    UCSR0C = (1 << UCSZ01) | (1 << UCSZ00);
}

void radio_send(const struct report *report)
{
    next_byte = (const uint8_t *)report;
    bytes_left = sizeof *report;
    sent = 0;
    UCSR0B = (1 << UDRIE0) | (1 << TXCIE0) | (1 << TXEN0);
    while (!sent)
        SLEEP_UNLESS(sent, LIGHT_SLEEP);

    /* The modem answers at once or not at all. */
    answered = 0;
    UCSR0B = (1 << RXCIE0) | (1 << RXEN0);
    uint8_t start = ticks_seen;
    while (!answered && (uint8_t)(ticks_seen - start) < ANSWER_TICKS)
        SLEEP_UNLESS(answered, LIGHT_SLEEP);
    UCSR0B = 0;
}

uint8_t radio_command(void)
{
    uint8_t last = command;
    command = 0;
    return last;
}
