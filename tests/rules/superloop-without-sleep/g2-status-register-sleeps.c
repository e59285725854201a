// device: msp430g2553
// Setting bits of the status register is this core's sleep instruction.
#include <msp430.h>

static volatile unsigned ticks;

static void idle(void)
{
    __bis_SR_register(LPM0_bits | GIE);
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    TA0CCR0 = 9999;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL_2 | MC_1;
    for (;;) {
        idle(); // clean: superloop-without-sleep main()
        P1OUT = (unsigned char)ticks;
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    ticks++;
    __bic_SR_register_on_exit(LPM0_bits);
}
