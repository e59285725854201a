// device: msp430f5438a
// flags: -Wall
// Records the tide: every six minutes the height of the water by a pressure sensor, and on request over a cable all heights of the last day.
#include "board.h"
#include "cable.h"
#include "gauge.h"
#include "rhythm.h"

int main(void)
{
    board_init();
    gauge_init();
    cable_init();
    rhythm_init();

    for (;;) {
        switch (rhythm_wait()) {
        case RHYTHM_MEASURE:
            gauge_store(gauge_measure());
            break;
        case RHYTHM_ASKED:
            cable_send(gauge_heights(), GAUGE_HEIGHTS);
            break;
        default:
            break;
        }
    }
}
