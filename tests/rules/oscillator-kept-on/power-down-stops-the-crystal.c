// device: avr64db32
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTA_PORT_vect) { PORTA.INTFLAGS = PIN2_bm; }

int main(void)
{
    _PROTECTED_WRITE(CLKCTRL.XOSC32KCTRLA, 0x81);
    PORTA.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: oscillator-kept-on XOSC32K
    }
}
