/*
 * A scale under a beehive: weighs it every quarter of an hour, reads the temperature of the brood nest, and sends both by
 * radio. Runs for years from three alkaline cells.
 */
#include "board.h"
#include "climate.h"
#include "power.h"
#include "radio.h"
#include "scale.h"

#define COMMAND_LAMP 'L'

static void make_report(void)
{
    struct report report;
    report.weight = scale_weigh();
    report.brood_nest = climate_brood_nest();
    report.battery = climate_battery();
    radio_send(&report);
    lamp(radio_command() == COMMAND_LAMP);
}

int main(void)
{
    board_init();
    radio_init();
    wake_timer_start();
    interrupts_on();

    for (;;)
    {
        if (report_due)
        {
            report_due = 0;
            make_report();
        }
        SLEEP_UNLESS(report_due, DEEP_SLEEP);
    }
}
