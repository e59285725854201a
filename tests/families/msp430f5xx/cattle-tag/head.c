#include "head.h"

#include "board.h"

static volatile uint8_t times;

void head_init(void)
{
    P1IES |= TILT;
    P1IFG = 0;
    P1IE |= TILT;
}

uint8_t head_take(void)
{
    uint8_t taken;

    __disable_interrupt();
    taken = times;
    times = 0;
    __enable_interrupt();
    return taken;
}

#pragma vector = PORT1_VECTOR
__interrupt void on_tilt(void)
{
    P1IFG &= (uint8_t)~TILT;
    if (times < UINT8_MAX)
        times++;
}
