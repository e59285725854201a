// device: avr128da48
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_PORT_vect)

int main(void)
{
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: pending-wake PORTD.INTFLAGS proven error
        sleep_disable();
    }
}
