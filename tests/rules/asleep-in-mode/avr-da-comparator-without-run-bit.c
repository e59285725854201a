// device: avr64db32
// Without its run bit the comparator that is to wake the part stops in standby.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(AC0_AC_vect) { AC0.STATUS = AC_CMPIF_bm; }
ISR(PORTA_PORT_vect) { PORTA.INTFLAGS = PIN2_bm; }

int main(void)
{
    PORTA.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    AC0.INTCTRL = AC_CMP_bm;
    AC0.CTRLA = AC_ENABLE_bm; // finding: asleep-in-mode AC0
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_mode();
    }
}
