// device: msp430fr5969
// flags: -Wall
// Logs the temperature of a vineyard every ten minutes into ferroelectric memory, and hands the log out on a serial line when its cable is plugged in.
#include <stdint.h>

#include "board.h"
#include "calendar.h"
#include "log.h"
#include "probe.h"

int main(void)
{
    board_init();
    probe_init();
    calendar_init();
    log_init();

    for (;;) {
        calendar_wait();
        log_append(probe_read());
    }
}
