// device: msp430fr2433
// The converter reaches the pin, but nothing has handed it over.
#include <msp430fr2433.h>


int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    ADCCTL0 = ADCSHT_2 | ADCON;
    ADCCTL1 = ADCSHP;
    ADCMCTL0 = ADCINCH_5; // finding: analog-pin-buffer-on P1.5 proven {{SYSCFG2}}
    ADCIE = ADCIE0;
    ADCCTL0 |= ADCENC | ADCSC;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(ADC_VECTOR))) void on_sample(void)
{
    P2OUT = (unsigned char)ADCMEM0;
}
