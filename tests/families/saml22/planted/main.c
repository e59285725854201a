// device: saml22j18a
// flags: -D__SAML22J18A__ -Wall
// A clock on a wall: its display stands all the time, and every second the calendar's crystal wakes it for one step.
#include "display.h"
#include "power.h"
#include "saml22.h"
#include "timekeeper.h"

int main(void)
{
    power_init();
    timekeeper_start();
    display_start();
    for (;;) {
        __disable_irq();
        if (!timekeeper_has_ticked()) {
            __DSB();
            __WFI(); // finding: full-power-regulator VREG proven
        }
        __enable_irq();
        if (timekeeper_take())
            display_show(timekeeper_seconds());
    }
}
