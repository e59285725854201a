// device: msp430f5529
// Divided by two and by eight, the crystal's clock goes round in half a minute, and nothing need be counted.
#include <msp430.h>

static volatile unsigned char is_due;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    PJDIR = 0xFFFF;
    P5SEL |= BIT4 | BIT5;
    UCSCTL6 &= ~XT1OFF;
    TA0CCR0 = 61439;
    TA0EX0 = TAIDEX_7;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | ID__2 | MC__UP | TACLR; // clean: woken-too-often TA0
    for (;;) {
        __disable_interrupt();
        while (!is_due) {
            __bis_SR_register(LPM3_bits | GIE);
            __disable_interrupt();
        }
        is_due = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_round(void)
{
    is_due = 1;
    __bic_SR_register_on_exit(LPM3_bits);
}
