#include "bucket.h"

#include "board.h"

static volatile uint16_t tips;

void bucket_init(void)
{
    P1OUT |= CONTACT;
    P1REN |= CONTACT;
    P1IES |= CONTACT;
    P1IFG &= (uint8_t)~CONTACT;
    P1IE |= CONTACT;
}

uint16_t bucket_take(void)
{
    __istate_t before = __get_interrupt_state();
    uint16_t taken;

    __disable_interrupt();
    taken = tips;
    tips = 0;
    __set_interrupt_state(before);
    return taken;
}

#pragma vector = PORT1_VECTOR
__interrupt void on_tip(void)
{
    P1IFG &= (uint8_t)~CONTACT;
    if (tips < UINT16_MAX)
        tips++;
    /* The main program has nothing to do with it: sleep on. */
}
