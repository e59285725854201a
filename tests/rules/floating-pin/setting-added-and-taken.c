// device: avr64ea48
// Bits can be added to several pins, and taken from them.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc | PORT_PULLUPEN_bm;
    PORTA.PINCTRLSET = 0xFF;
    PORTB.PINCTRLUPD = 0xFF;
    PORTC.PINCTRLUPD = 0xFF;
    PORTD.PINCTRLUPD = 0xFF;
    PORTE.PINCTRLUPD = 0xFF;
    PORTF.PINCTRLUPD = 0xFF;
    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc;
    PORTA.PINCTRLCLR = 0x03;
    PORTA.PINCONFIG = PORT_PULLUPEN_bm;
    PORTA.PINCTRLCLR = 0x02; // finding: floating-pin PA1 proven warning
    for (;;) {
        sleep_mode(); // state: PORTA.PIN0CTRL = 0b0000_1000
        // state@-1: PORTA.PIN1CTRL = 0b0000_0000
        // state@-2: PORTA.PIN2CTRL = 0b0000_1100
    }
}
