// device: msp430f5529
// The crystal's clock goes round in two seconds; divided further it would need no counting for half a minute.
#include <msp430.h>

static volatile unsigned char rounds;

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
    TA0CCR0 = 65535; // finding: woken-too-often TA0 proven warning
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    for (;;) {
        __disable_interrupt();
        while (rounds < 15) {
            __bis_SR_register(LPM3_bits | GIE);
            __disable_interrupt();
        }
        rounds = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_round(void)
{
    rounds++;
    __bic_SR_register_on_exit(LPM3_bits);
}
