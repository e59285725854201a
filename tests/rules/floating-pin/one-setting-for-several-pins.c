// device: avr128da48
// A write of a mask sends one setting to the pins whose bits are set; the setting is one register that every port shows.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTD.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc; // finding: floating-pin PC7 proven warning
    PORTA.PINCTRLUPD = 0xFF;
    PORTB.PINCTRLUPD = 0xFF;
    PORTC.PINCTRLUPD = 0x7F;
    PORTD.PINCTRLUPD = 0xFF;
    PORTE.PINCTRLUPD = 0xFF;
    PORTF.PINCTRLUPD = 0xFF;
    // clean: floating-pin PC6
    for (;;) {
        sleep_mode(); // state: PORTA.PINCONFIG = 0b0000_0100
        // state@-1: PORTB.PIN5CTRL = 0b0000_0100
        // state@-2: PORTC.PIN7CTRL = 0b0000_0000
    }
}
