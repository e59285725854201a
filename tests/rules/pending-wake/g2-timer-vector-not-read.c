// device: msp430g2553
// The timer's second vector has several flags: only reading its vector register, or a write, clears them.
#include <msp430.h>

static volatile unsigned rounds;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    BCSCTL3 = LFXT1S_2;
    TA0CTL = TASSEL_1 | ID_3 | MC_2 | TACLR | TAIE;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // finding: pending-wake TA0CTL.TAIFG proven
    }
}

__attribute__((interrupt(TIMER0_A1_VECTOR))) void on_round(void)
{
    rounds++;
}
