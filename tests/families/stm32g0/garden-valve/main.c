// device: stm32g031xx
// flags: -DSTM32G031xx -Wall
// A garden's valve on two cells: twice a day it waters for a while; a button opens and closes it by hand.
#include "stm32g0xx.h"
#include "valve.h"

#define PAUSE (12u * 60u * 60u)
#define WATERING (15u * 60u)

int main(void)
{
    int is_open = 0;

    board_init();
    clock_init();
    button_init();
    clock_wake_in(PAUSE);
    for (;;) {
        __disable_irq();
        if (clock_is_due() | button_was_pressed()) {
            __enable_irq();
            is_open = !is_open;
            valve_move(is_open);
            clock_wake_in(is_open ? WATERING : PAUSE);
        } else {
            SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
            __WFI();
            __enable_irq();
        }
    }
}
