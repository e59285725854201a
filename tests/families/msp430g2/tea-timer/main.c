// device: msp430g2553
// flags: -Wall
// A timer for tea: a key starts five minutes, then a disc buzzes for two seconds. In between the part waits for the key, with no clock.
#include "board.h"
#include "buzzer.h"
#include "interval.h"
#include "key.h"

#define STEEPED 300u
#define BUZZ 2u

int main(void)
{
    board_init();

    for (;;) {
        key_wait();
        interval_wait(STEEPED);
        buzzer_on();
        interval_wait_sounding(BUZZ);
        buzzer_off();
    }
}
