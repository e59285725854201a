// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTC.DIRSET = PIN7_bm;
    if (PORTA.IN & PIN0_bm) {
        PORTCFG.CLKOUT = 0x01; // finding: clock-output-on CLKOUT PC7 possible note
    }
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
