#include "cable.h"

#include "board.h"

#define DIGITS 5

static const uint16_t *volatile sending;
static volatile uint8_t left;
static volatile uint8_t digit;

void cable_init(void)
{
    P5SEL |= CABLE_OUT | CABLE_IN;
    UCA1CTL1 = UCSSEL__SMCLK | UCSWRST;
    /* 9600 baud from 1.048576 MHz. */
    UCA1BR0 = 109;
    UCA1BR1 = 0;
    UCA1MCTL = UCBRS_2;
    UCA1CTL1 &= (uint8_t)~UCSWRST;
    UCA1IE |= UCRXIE;
}

void cable_send(const uint16_t *numbers, uint8_t count)
{
    if (left > 0)
        return;
    sending = numbers;
    digit = 0;
    left = count;
    UCA1IE |= UCTXIE;
}

static void send_next(void)
{
    if (left == 0) {
        UCA1IE &= (uint8_t)~UCTXIE;
        return;
    }
    if (digit < DIGITS - 1) {
        UCA1TXBUF = "0123456789abcdef"[(*sending >> (12 - 4 * digit)) & 15];
        digit++;
    } else {
        UCA1TXBUF = '\n';
        digit = 0;
        sending++;
        left--;
    }
}

enum cable_event cable_serve(void)
{
    switch (UCA1IV) {
    case USCI_UCRXIFG:
        return UCA1RXBUF == '?' ? CABLE_ASKED : CABLE_NOTHING;
    case USCI_UCTXIFG:
        send_next();
        return CABLE_NOTHING;
    default:
        return CABLE_NOTHING;
    }
}
