#include "display.h"

#include "board.h"

#define DIGITS 6
#define SET_DIGITS 0x40

static uint8_t message[1 + DIGITS];
static volatile uint8_t sent;

void display_init(void)
{
    P3OUT |= DISPLAY_SELECT;
    P3SEL |= DISPLAY_WIRES;
    UCB0CTL0 = UCCKPH | UCMSB | UCMST | UCSYNC;
    UCB0CTL1 = UCSSEL_2 | UCSWRST;
    UCB0BR0 = 1;
    UCB0BR1 = 0;
    UCB0CTL1 &= (uint8_t)~UCSWRST;
}

void display_show(uint32_t number)
{
    message[0] = SET_DIGITS;
    for (uint8_t i = DIGITS; i > 0; i--) {
        message[i] = (uint8_t)(number % 10);
        number /= 10;
    }
    sent = 0;
    P3OUT &= (uint8_t)~DISPLAY_SELECT;
    IE2 |= UCB0TXIE;
}

#pragma vector = USCIAB0TX_VECTOR
__interrupt void on_sent(void)
{
    if (sent < sizeof message) {
        UCB0TXBUF = message[sent++];
    } else {
        IE2 &= (uint8_t)~UCB0TXIE;
        P3OUT |= DISPLAY_SELECT;
    }
}
