#include "display.h"

#include "board.h"

/* Which bars of a figure are dark. */
static const uint8_t figures[10] = {0xEB, 0x60, 0xC7, 0xE5, 0x6C, 0xAD, 0xAF, 0xE0, 0xEF, 0xED};

void display_init(void)
{
    LCDCPCTL0 = 0xFFF0;
    LCDCCTL0 = LCDDIV__1 | LCDPRE__16 | LCD4MUX | LCDLP;
    LCDCVCTL = VLCD_8 | LCDCPEN;
    LCDCMEMCTL = LCDCLRM;
    LCDCCTL0 |= LCDON;
}

static void show(uint8_t place, uint8_t figure)
{
    LCDMEM[place] = figures[figure % 10];
}

void display_time(uint8_t hour, uint8_t minute)
{
    show(2, hour >> 4);
    show(3, hour & 0x0F);
    show(4, minute >> 4);
    show(5, minute & 0x0F);
}
