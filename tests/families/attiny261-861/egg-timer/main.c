// device: attiny861a
// flags: -DF_CPU=1000000UL -Wall
// An egg timer: each press of the key adds a minute, lamps count down, nothing runs when they are out.
#include "countdown.h"
#include "panel.h"

int main(void)
{
    panel_init();
    countdown_init();

    for (;;) {
        if (panel_key_was_pressed())
            countdown_add_minute();
        panel_show(countdown_minutes());
        countdown_rest();
    }
}
