// device: attiny1614
// option: FUSE.BODCFG = 0x05
// The program has it look from time to time only.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    _PROTECTED_WRITE(BOD.CTRLA, 0x02);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    // clean: brown-out-always-on BOD
    for (;;) {
        sleep_mode(); // state: BOD.CTRLA = 0b0000_0110
    }
}
