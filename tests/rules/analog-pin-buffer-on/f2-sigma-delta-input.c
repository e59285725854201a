// device: msp430f2013
// The channel connects two pins; only the enable of each input takes its buffer away.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1DIR = (unsigned char)~(BIT2 | BIT3);
    SD16AE = BIT2;
    SD16CTL = SD16SSEL_1;
    SD16INCTL0 = SD16INCH_1; // finding: analog-pin-buffer-on P1.3 proven warning
    for (;;) {
        __disable_interrupt();
        SD16CCTL0 = SD16SNGL | SD16IE | SD16SC;
        __bis_SR_register(LPM0_bits | GIE);
    }
}

__attribute__((interrupt(SD16_VECTOR))) void on_sample(void)
{
    (void)SD16MEM0;
    __bic_SR_register_on_exit(LPM0_bits);
}
