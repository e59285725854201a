// device: attiny13a
// flags: -DF_CPU=1200000UL -Wall
// A night light for a stair: a light-dependent resistor is looked at every few seconds, a transistor switches the lamp.
#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "lamp.h"
#include "light.h"
#include "pause.h"

#define DARK 180
#define BRIGHT 300

int main(void)
{
    lamp_init();
    light_init();
    pause_init();

    for (;;) {
        uint16_t level = light_read();

        if (level < DARK)
            lamp_switch(1);
        else if (level > BRIGHT)
            lamp_switch(0);
        pause();
    }
}
