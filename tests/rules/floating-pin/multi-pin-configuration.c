// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// One write reaches all pins of the mask.
int main(void)
{
    PORTCFG.MPCMASK = 0xff;
    PORTA.PIN0CTRL = PORT_OPC_PULLUP_gc;
    PORTCFG.MPCMASK = 0xff;
    PORTC.PIN0CTRL = PORT_OPC_PULLDOWN_gc;
    PORTD.DIR = 0xf8; // finding: floating-pin PD0 PD1 PD2 proven warning
    PORTR.DIRSET = 0x03;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
