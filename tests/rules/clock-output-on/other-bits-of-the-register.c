// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTC.DIRSET = PIN7_bm;
    PORTCFG.CLKOUT = PORTCFG_CLKOUTSEL_CLK2X_gc;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
