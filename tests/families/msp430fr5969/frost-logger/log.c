#include "log.h"

#include "board.h"

#define LOG_LENGTH 1008

static uint16_t samples[LOG_LENGTH];
static volatile uint16_t count;
static volatile uint16_t position;

/* 9600 baud from 1 MHz. The interface asks for its clock when a byte comes or goes, and for none in between. */
void log_init(void)
{
    P2SEL1 |= CABLE_OUT | CABLE_IN;
    P2SEL0 &= ~(CABLE_OUT | CABLE_IN);
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 6;
    UCA0MCTLW = 0x2081;
    UCA0CTLW0 &= ~UCSWRST;
    UCA0IE = UCRXIE;
}

void log_append(uint16_t sample)
{
    if (count < LOG_LENGTH)
        samples[count++] = sample;
}

/* Any byte from the cable asks for the log, two bytes a sample. */
__attribute__((interrupt(USCI_A0_VECTOR))) void on_cable(void)
{
    switch (UCA0IV) {
    case USCI_UART_UCRXIFG:
        if (UCA0RXBUF != 0 && count > 0) {
            position = 0;
            UCA0IE |= UCTXIE;
        }
        break;
    case USCI_UART_UCTXIFG:
        UCA0TXBUF = (uint8_t)(samples[position / 2] >> (position % 2 * 8));
        if (++position >= 2 * count)
            UCA0IE &= ~UCTXIE;
        break;
    default:
        break;
    }
}
