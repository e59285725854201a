#include "lid.h"

#include <stdint.h>

#include "box.h"

static volatile bool was_opened;

void lid_init(void)
{
    P2IES &= (uint8_t)~LID;
    P2IFG = 0;
    P2IE = LID;
}

bool lid_was_opened(void)
{
    bool opened;

    __disable_interrupt();
    opened = was_opened;
    was_opened = false;
    __enable_interrupt();
    return opened;
}

#pragma vector = PORT2_VECTOR
__interrupt void on_lid(void)
{
    P2IFG &= (uint8_t)~LID;
    was_opened = true;
}
