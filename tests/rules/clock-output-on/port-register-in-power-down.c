// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTCFG.CLKOUT = 0x01; // finding: clock-output-on CLKOUT PC7 proven note {{awake}}
    PORTC.DIRSET = PIN7_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
