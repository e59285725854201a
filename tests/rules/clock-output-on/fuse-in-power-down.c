// device: atmega328p
// option: LFUSE.CKOUT = 0
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN); // finding: clock-output-on CLKO PB0 proven note {{awake}}
    for (;;) {
        sleep_mode();
    }
}
