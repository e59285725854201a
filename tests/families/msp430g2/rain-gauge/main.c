// device: msp430g2553
// flags: -Wall
// Counts the tips of a rain gauge's bucket and tells the sum on a serial line every quarter of an hour. A lithium cell, a buried cable.
#include <stdint.h>

#include "board.h"
#include "bucket.h"
#include "clock.h"
#include "report.h"

int main(void)
{
    board_init();
    clock_init();
    bucket_init();
    report_init();

    for (;;) {
        if (clock_wait() == CLOCK_REPORT_IS_DUE)
            report_send(bucket_take());
    }
}
