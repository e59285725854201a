// device: attiny13a
// flags: -DF_CPU=1200000UL -Wall
// Sounds a horn when a cellar floods: two bare wires close a contact, the watchdog looks at it every two seconds.
#include "horn.h"
#include "look.h"

int main(void)
{
    horn_init();
    look_init();

    for (;;) {
        look_wait();
        horn(look_is_wet());
        horn(0);
    }
}
