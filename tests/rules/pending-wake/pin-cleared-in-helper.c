// device: avr128da48
// What is read is written back: ones clear.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void acknowledge(volatile uint8_t *flags) { *flags = *flags; }

ISR(PORTD_PORT_vect) { acknowledge(&PORTD.INTFLAGS); }

int main(void)
{
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // clean: pending-wake PORTD.INTFLAGS
        sleep_disable();
    }
}
