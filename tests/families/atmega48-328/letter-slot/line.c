#include "slot.h"

static volatile uint8_t is_sent;

ISR(USART1_TX_vect)
{
    is_sent = 1;
}

void line_send(uint8_t byte)
{
    PRR0 = (uint8_t)~(1 << PRUSART1);
    UBRR1L = 12;
    UCSR1B = 1 << TXCIE1 | 1 << TXEN1;
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
    UCSR1B = 0;
    PRR0 = 0xFF;
}
