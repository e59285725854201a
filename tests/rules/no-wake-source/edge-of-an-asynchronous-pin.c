// device: attiny1614
// Pin 2 is sensed without a clock.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = 0xFF;
}

int main(void)
{
    PORTA.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    // clean: no-wake-source SLEEP
    for (;;) {
        sleep_mode();
    }
}
