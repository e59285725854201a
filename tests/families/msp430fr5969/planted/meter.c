#include "meter.h"

#include <stdint.h>

static volatile uint32_t pulses;

void meter_init(void)
{
    P1IES |= REED;
    P1IFG = 0;
    P1IE = REED;
    REFCTL0 |= REFON; // finding: peripheral-on-in-sleep REF_A proven warning
    UCB0CTLW0 = UCSWRST | UCMST | UCSYNC | UCSSEL__SMCLK;
    UCB0BRW = 2;
    UCB0CTLW0 &= ~UCSWRST;
}

void meter_send(void)
{
    uint32_t count = pulses;

    __delay_cycles(20000); // finding: busy-wait-delay meter_send() proven
    for (uint8_t i = 0; i < sizeof count; i++) {
        UCB0TXBUF = (uint8_t)(count >> (8 * i));
        while (UCB0STATW & UCBUSY)
            ;
    }
}

#pragma vector = PORT1_VECTOR
__interrupt void on_pulse(void)
{
    P1IFG &= ~REED;
    pulses++;
}
