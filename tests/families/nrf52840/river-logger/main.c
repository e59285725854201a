// device: nrf52840_xxaa
// flags: -DNRF52840_XXAA -Wall
// A logger at a river: a float switch counts tips, each minute makes a record, a full page goes to the flash beside it, and a held pin asks for the page.
#include "logger.h"

static record page[RECORDS_A_PAGE];

int main(void)
{
    uint32_t count = 0, address = 0, minute = 0;

    supply_prepare();
    pins_prepare();
    clock_prepare();
    guard_prepare();
    for (;;) {
        __WFE();
        guard_feed();
        if (clock_minutes() != minute) {
            minute = clock_minutes();
            page[count].minute = minute;
            page[count].tips = pins_tips();
            if (++count == RECORDS_A_PAGE) {
                store_write(page, address);
                address += sizeof page;
                count = 0;
            }
        }
        if (pins_is_asked())
            line_write(page, count);
    }
}
