#include "tube.h"

#include "board.h"

static volatile uint16_t axles;

void tube_init(void)
{
    P1OUT |= TUBE;
    P1REN |= TUBE;
    P1IES |= TUBE;
    P1IFG &= (uint8_t)~TUBE;
    P1IE |= TUBE;
}

uint16_t tube_take(void)
{
    uint16_t taken;

    __disable_interrupt();
    taken = axles;
    axles = taken & 1;
    __enable_interrupt();
    return taken / 2;
}

#pragma vector = PORT1_VECTOR
__interrupt void on_axle(void)
{
    switch (P1IV) {
    case P1IV_P1IFG4:
        axles++;
        break;
    default:
        break;
    }
}
