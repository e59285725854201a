// device: atmega2560
// flags: -DF_CPU=1000000UL -Wall
// The clock of a mill's sluice: opens and closes it at set times of the day; a 32 kHz crystal keeps the time.
#include "calendar.h"
#include "gate.h"
#include "idle.h"
#include "pins.h"

#define OPENS_AT (6 * 60)
#define CLOSES_AT (21 * 60)

int main(void)
{
    pins_init();
    calendar_init();

    for (;;) {
        uint16_t minute = calendar_minute();

        if (minute == OPENS_AT)
            gate_move(GATE_OPEN);
        else if (minute == CLOSES_AT)
            gate_move(GATE_CLOSED);
        idle_until_tick();
    }
}
