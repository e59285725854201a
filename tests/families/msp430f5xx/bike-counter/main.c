// device: msp430f5529
// flags: -Wall
// Counts bicycles on a path: a rubber tube across it, an air pressure switch at its end. Every hour the count goes to a data flash. Two lithium cells for three years.
#include "board.h"
#include "calendar.h"
#include "log.h"
#include "tube.h"

int main(void)
{
    board_init();
    calendar_init();
    tube_init();
    log_init();

    for (;;) {
        calendar_sleep_until_hour();
        log_append(calendar_hour(), tube_take());
    }
}
