// device: msp430fr2433
// A switch in the system module hands the pin over and takes its buffer away.
#include <msp430fr2433.h>


int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    SYSCFG2 |= ADCPCTL5;
    PM5CTL0 &= ~LOCKLPM5;
    ADCCTL0 = ADCSHT_2 | ADCON;
    ADCCTL1 = ADCSHP;
    ADCMCTL0 = ADCINCH_5;
    ADCIE = ADCIE0;
    ADCCTL0 |= ADCENC | ADCSC;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: analog-pin-buffer-on P1.5
}

__attribute__((interrupt(ADC_VECTOR))) void on_sample(void)
{
    P2OUT = (unsigned char)ADCMEM0;
}
