// device: msp430g2553
#include <msp430.h>

static volatile unsigned rounds;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    BCSCTL3 = LFXT1S_2;
    TA1CTL = TASSEL_1 | ID_3 | MC_2 | TACLR | TAIE;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // clean: pending-wake TA1CTL.TAIFG
    }
}

__attribute__((interrupt(TIMER1_A1_VECTOR))) void on_round(void)
{
    switch (TA1IV) {
    case TA1IV_TAIFG:
        rounds++;
        break;
    default:
        break;
    }
}
