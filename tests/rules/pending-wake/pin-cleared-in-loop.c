// device: avr128da48
// The handler switches the interrupt off, the loop clears its flag and switches it on again.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t is_open;

ISR(PORTD_PORT_vect)
{
    is_open = 1;
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm;
}

int main(void)
{
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // clean: pending-wake PORTD.INTFLAGS
        sleep_disable();
        PORTD.INTFLAGS = PIN5_bm;
        PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;
    }
}
