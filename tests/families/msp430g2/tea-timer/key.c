#include "key.h"

#include <stdbool.h>

#include "board.h"

static volatile bool is_pressed;

void key_wait(void)
{
    P1IES |= KEY;
    P1IFG = 0;
    P1IE = KEY;
    __disable_interrupt();
    while (!is_pressed) {
        __bis_SR_register(LPM4_bits | GIE);
        __disable_interrupt();
    }
    is_pressed = false;
    P1IE = 0;
    __enable_interrupt();
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    is_pressed = true;
    __bic_SR_register_on_exit(LPM4_bits);
}
