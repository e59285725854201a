// device: atmega3208
// flags: -DF_CPU=833333UL -Wall
// Lights a lamp under the eaves while the rain barrel is nearly empty; a float closes a contact before it runs over. Two cells.
#include "board.h"
#include "gauge.h"
#include "wakeup.h"

#define NEARLY_EMPTY 210
#define SECONDS_BETWEEN_LOOKS 60

int main(void)
{
    uint8_t seconds = 0;

    board_init();
    gauge_init();
    wakeup_init();

    for (;;) {
        wakeup_wait();
        if (wakeup_overflow()) {
            board_lamp(1);
        } else if (++seconds == SECONDS_BETWEEN_LOOKS) {
            seconds = 0;
            board_lamp(gauge_read() < NEARLY_EMPTY);
        }
    }
}
