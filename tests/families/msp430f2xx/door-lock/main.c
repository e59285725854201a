// device: msp430f249
// flags: -Wall
// A lock for a garden door: four digits on a keypad let a motor draw the bolt back for five seconds. Four alkaline cells.
#include "board.h"
#include "bolt.h"
#include "keypad.h"

static const uint8_t code[] = { 3, 1, 4, 1 };

int main(void)
{
    uint8_t right = 0;

    board_init();
    keypad_init();
    bolt_init();

    for (;;) {
        uint8_t key = keypad_wait();

        if (key == code[right]) {
            right++;
        } else {
            right = 0;
        }
        if (right == sizeof code) {
            right = 0;
            bolt_open();
        }
    }
}
