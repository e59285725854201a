#include "line.h"

#include <stdbool.h>

#include "supply.h"

#define DIGITS 5

static volatile bool was_asked;
static uint8_t answer[DIGITS];
static volatile uint8_t sent;

/* 4800 baud from the reference's 32 multiples; the interface asks for its clock when it has something to send. */
void line_init(void)
{
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 218;
    UCA0MCTLW = 0x5500;
    UCA0CTLW0 &= ~UCSWRST;
    P2IES &= (uint8_t)~LINE_WAKE;
    P2IFG = 0;
    P2IE = LINE_WAKE;
}

void line_wait(void)
{
    __disable_interrupt();
    while (!was_asked) {
        __bis_SR_register(LPM4_bits | GIE);
        __disable_interrupt();
    }
    was_asked = false;
    __enable_interrupt();
}

void line_answer(uint16_t value)
{
    for (uint8_t i = DIGITS; i > 0; i--) {
        answer[i - 1] = (uint8_t)('0' + value % 10);
        value /= 10;
    }
    sent = 0;
    UCA0IE |= UCTXIE;
}

__attribute__((interrupt(PORT2_VECTOR))) void on_question(void)
{
    P2IFG = 0;
    was_asked = true;
    __bic_SR_register_on_exit(LPM4_bits);
}

__attribute__((interrupt(USCI_A0_VECTOR))) void on_sent(void)
{
    if (UCA0IV == USCI_UART_UCTXIFG) {
        UCA0TXBUF = answer[sent];
        if (++sent >= DIGITS)
            UCA0IE &= ~UCTXIE;
    }
}
