// device: attiny85
// option: LFUSE.CKOUT = 0
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: clock-output-on CLKO PB4 proven warning
    for (;;) {
        sleep_mode();
    }
}
