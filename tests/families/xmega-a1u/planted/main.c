// device: atxmega64a1u
// flags: -DF_CPU=2000000UL -Wall
// A loom's counter: a light barrier counts the shots, a display port shows them.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "loom.h"

static volatile uint16_t shots;

ISR(PORTD_INT1_vect)
{
    shots++;
}

int main(void)
{
    loom_init(); // finding: floating-pin PK6 proven
    PORTD.PIN5CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTD.DIRCLR = PIN5_bm;
    PORTD.INT1MASK = PIN5_bm;
    PORTD.INTCTRL = PORT_INT1LVL_LO_gc; // finding: asleep-in-mode PORTD proven
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();

    for (;;) {
        sleep_mode(); // finding: no-wake-source SLEEP proven
        loom_show(shots);
    }
}
