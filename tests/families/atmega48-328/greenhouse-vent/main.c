// device: atmega328p
// flags: -DF_CPU=1000000UL -Wall
// Opens the roof vent of a greenhouse when it gets warm; a button stops the motor. Two cells in a weatherproof box.
#include "board.h"
#include "thermometer.h"
#include "vent.h"
#include "wakeup.h"

#define WARM 620
#define COOL 540

/* The motor needs two periods of the watchdog from one end to the other. */
#define PERIODS_OF_A_DRIVE 2

int main(void)
{
    uint8_t periods_left = 0;
    uint8_t is_open = 0;

    board_init();
    wakeup_init();

    for (;;) {
        uint8_t cause = wakeup_wait();

        if (cause & WOKEN_BY_BUTTON)
            periods_left = 0;
        else if (periods_left > 0)
            periods_left--;

        if (periods_left > 0)
            continue;
        vent_drive(VENT_STILL);
        if (cause & WOKEN_BY_BUTTON)
            continue;

        uint16_t warmth = thermometer_read();
        if (warmth > WARM && !is_open) {
            vent_drive(VENT_OPENING);
            periods_left = PERIODS_OF_A_DRIVE;
            is_open = 1;
        } else if (warmth < COOL && is_open) {
            vent_drive(VENT_CLOSING);
            periods_left = PERIODS_OF_A_DRIVE;
            is_open = 0;
        }
    }
}
