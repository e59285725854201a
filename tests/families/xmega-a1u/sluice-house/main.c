// device: atxmega128a1u
// flags: -DF_CPU=2000000UL -Wall
// The panel of a sluice house: sixteen keys wake it, lamps show what is open, and go out after a while.
#include "keys.h"
#include "panel.h"

#define TICKS_LIT 20

int main(void)
{
    uint8_t ticks_left = 0;

    panel_init();
    keys_init();

    for (;;) {
        uint8_t what = keys_wait();

        if (what & KEY_CAME) {
            panel_toggle(keys_last());
            ticks_left = TICKS_LIT;
        }
        if (ticks_left > 0 && --ticks_left == 0)
            panel_dark();
        else
            panel_show();
    }
}
