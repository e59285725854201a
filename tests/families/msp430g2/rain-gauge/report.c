#include "report.h"

#include "board.h"

static char line[7];
static volatile uint8_t position;
static volatile uint8_t length;

void report_init(void)
{
    P1SEL |= CABLE;
    P1SEL2 |= CABLE;
    UCA0CTL1 = UCSSEL_2 | UCSWRST;
    /* 9600 baud from 1 MHz. */
    UCA0BR0 = 104;
    UCA0BR1 = 0;
    UCA0MCTL = UCBRS0;
    UCA0CTL1 &= (uint8_t)~UCSWRST;
}

void report_send(uint16_t number)
{
    uint8_t digits = 0;
    uint16_t rest = number;

    do {
        digits++;
        rest /= 10;
    } while (rest > 0);
    line[digits] = '\n';
    length = digits + 1;
    position = 0;
    while (digits > 0) {
        line[--digits] = (char)('0' + number % 10);
        number /= 10;
    }
    IE2 |= UCA0TXIE;
}

__attribute__((interrupt(USCIAB0TX_VECTOR))) void on_sent(void)
{
    if (position < length)
        UCA0TXBUF = (uint8_t)line[position++];
    else
        IE2 &= (uint8_t)~UCA0TXIE;
}
