// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTC.DIRSET = PIN7_bm;
    PORTCFG.CLKOUT = 0x01;
    PORTCFG.CLKOUT = 0;
    // clean: clock-output-on CLKOUT RTCOUT
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
