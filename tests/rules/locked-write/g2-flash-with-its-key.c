// device: msp430g2553
// Watchdog and flash controller each have a password of their own, the same in every write.
#include <msp430.h>

static void erase(unsigned *segment)
{
    FCTL2 = FWKEY | FSSEL_1 | FN1;
    FCTL3 = FWKEY;
    FCTL1 = FWKEY | ERASE;
    *segment = 0;
    FCTL1 = FWKEY;
    FCTL3 = FWKEY | LOCK;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    erase((unsigned *)0x1000);
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
