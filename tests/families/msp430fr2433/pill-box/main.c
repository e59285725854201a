// device: msp430fr2433
// flags: -Wall
// A box for pills blinks four times a day until its lid is opened. A counter on the internal slow oscillator keeps the time.
#include "box.h"
#include "dose.h"
#include "lid.h"

int main(void)
{
    box_init();
    lid_init();
    dose_init();

    for (;;) {
        dose_wait();
        if (lid_was_opened())
            dose_taken();
        else if (dose_is_due())
            box_blink();
    }
}
