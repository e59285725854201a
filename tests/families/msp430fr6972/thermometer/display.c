#include "display.h"

#include "board.h"

static const uint8_t figures[10] = {0xEB, 0x60, 0xC7, 0xE5, 0x6C, 0xAD, 0xAF, 0xE0, 0xEF, 0xED};

void display_init(void)
{
    LCDCPCTL1 = 0x00FF;
    LCDCCTL0 = LCDSSEL | LCDPRE__16 | LCD4MUX | LCDLP;
    LCDCVCTL = VLCD_8 | LCDCPEN;
    LCDCMEMCTL = LCDCLRM;
    LCDCCTL0 |= LCDON;
}

void display_number(uint16_t number)
{
    uint8_t place;

    for (place = 8; place < 12; place++) {
        LCDMEM[place] = figures[number % 10];
        number /= 10;
    }
}
