#include "radio.h"

#include <stdbool.h>

#include "board.h"

static volatile uint16_t message;
static volatile uint8_t sent;

/* 9600 baud from 1 MHz. The CPU sleeps until both bytes have gone. */
void radio_send(uint16_t value)
{
    P8OUT |= RADIO_SUPPLY;
    UCA2CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA2BRW = 6;
    UCA2MCTLW = 0x2081;
    UCA2CTLW0 &= ~UCSWRST;
    message = value;
    sent = 0;
    UCA2IE = UCTXIE;

    __disable_interrupt();
    while (sent < 3) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    UCA2CTLW0 |= UCSWRST;
    P8OUT &= (uint8_t)~RADIO_SUPPLY;
}

__attribute__((interrupt(EUSCI_A2_VECTOR))) void on_sent(void)
{
    if (UCA2IV != USCI_UART_UCTXIFG)
        return;
    if (sent < 2)
        UCA2TXBUF = (uint8_t)(message >> (8 * sent));
    else
        UCA2IE = 0;
    sent++;
    __bic_SR_register_on_exit(LPM3_bits);
}
