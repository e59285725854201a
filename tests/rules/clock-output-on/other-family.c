// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTD.DIRSET = PIN7_bm;
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PD7_gc; // finding: clock-output-on CLKOUT PD7 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
