// device: msp430fr5969
// flags: -Wall
// A tag that counts how often a cold store's door opens and rings if it stays open for two minutes. Between openings everything is off.
#include "board.h"
#include "door.h"
#include "timeout.h"

int main(void)
{
    board_init();
    timeout_init();
    door_init();

    for (;;) {
        door_wait();
        if (!door_is_open()) {
            timeout_stop();
            buzzer_off();
        } else if (!timeout_is_over()) {
            timeout_start();
        } else {
            buzzer_on();
        }
    }
}
