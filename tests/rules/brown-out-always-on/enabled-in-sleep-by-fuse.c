// device: attiny1614
// option: FUSE.BODCFG = 0x05
// The fuse presets what the detector does in sleep, and the program could change it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: brown-out-always-on BOD proven note
        sleep_disable();
    }
}
