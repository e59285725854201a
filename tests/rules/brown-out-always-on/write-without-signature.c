// device: atmega4809
// option: FUSE.BODCFG = 0x05
// Without its signature the write that was to stop the detector is lost.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTC_PORT_vect) { PORTC.INTFLAGS = PIN2_bm; }

int main(void)
{
    BOD.CTRLA = 0;
    PORTC.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: brown-out-always-on BOD proven note
        sleep_disable();
    }
}
