// device: msp430fr6989
// Of ten seconds the clock has no event.
#include <msp430fr6989.h>

static volatile unsigned char seconds;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCMODE;
    RTCCTL0_L = RTCRDYIE; // clean: woken-too-often RTC_C
    RTCCTL0_H = 0;
    for (;;) {
        __disable_interrupt();
        while (seconds < 10) {
            __bis_SR_register(LPM3_bits | GIE);
            __disable_interrupt();
        }
        seconds = 0;
        __enable_interrupt();
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(RTC_VECTOR))) void on_second(void)
{
    (void)RTCIV;
    seconds++;
    __bic_SR_register_on_exit(LPM3_bits);
}
