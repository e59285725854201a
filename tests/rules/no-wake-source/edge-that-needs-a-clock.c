// device: attiny1614
// On one edge only pins 2 and 6 are sensed without a clock.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = 0xFF;
}

int main(void)
{
    PORTA.PIN3CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: no-wake-source SLEEP proven error
        sleep_disable();
    }
}
