#include "keypad.h"

#include <stdbool.h>

#include "board.h"

#define NO_KEY 16

static volatile bool is_pressed;

void keypad_init(void)
{
    P1IES |= ROWS;
    P1IFG = 0;
    P1IE |= ROWS;
}

/* Which key it is, one column after the other. */
static uint8_t scan(void)
{
    uint8_t key = NO_KEY;

    for (uint8_t column = 0; column < 4; column++) {
        uint8_t rows;

        P3OUT = (P3OUT & (uint8_t)~COLUMNS) | (COLUMNS & (uint8_t)~(1 << column));
        rows = (uint8_t)~P1IN & ROWS;
        for (uint8_t row = 0; row < 4; row++)
            if (rows & (1 << row))
                key = (uint8_t)(4 * row + column);
    }
    P3OUT &= (uint8_t)~COLUMNS;
    return key;
}

uint8_t keypad_wait(void)
{
    uint8_t key;

    do {
        __disable_interrupt();
        while (!is_pressed) {
            __bis_SR_register(LPM4_bits | GIE);
            __disable_interrupt();
        }
        is_pressed = false;
        key = scan();
        P1IFG = 0;
        P1IE |= ROWS;
        __enable_interrupt();
    } while (key == NO_KEY);
    return key;
}

/* Its own noise does not disturb the scan. */
#pragma vector = PORT1_VECTOR
__interrupt void on_key(void)
{
    P1IE &= (uint8_t)~ROWS;
    P1IFG = 0;
    is_pressed = true;
    __bic_SR_register_on_exit(LPM4_bits);
}
