// device: atmega1284p
// option: LFUSE.CKOUT = 0
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: clock-output-on CLKO PB1 proven warning
    for (;;) {
        sleep_mode();
    }
}
