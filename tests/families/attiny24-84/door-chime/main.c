// device: attiny84a
// flags: -DF_CPU=1000000UL -Wall
// A door chime: the button wakes it, a timer plays two notes while the rest of the part sleeps.
#include "button.h"
#include "chime.h"

int main(void)
{
    chime_init();
    button_init();

    for (;;) {
        button_wait();
        chime_play(NOTE_HIGH);
        chime_play(NOTE_LOW);
        chime_stop();
    }
}
