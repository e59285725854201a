// device: atmega32u4
// flags: -DF_CPU=1000000UL -Wall
// A pad of four keys for a museum's lift, on a battery: a key wakes it, it sends one byte on the serial line and sleeps on.
#include "keys.h"
#include "line.h"
#include "pins.h"

int main(void)
{
    pins_init();
    line_init();
    keys_init();

    for (;;)
        line_send(keys_wait());
}
