// device: avr64db32
// board: PC0: { load: "alarm", active: high, milliamps: 8 }
// The handler sounds the alarm through the port in the I/O space, and the program goes to sleep over it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = PIN2_bm;
    VPORTC.OUT |= PIN0_bm; // finding: load-driven-in-sleep PC0 proven
}

int main(void)
{
    PORTA.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    VPORTC.DIR = PIN0_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
