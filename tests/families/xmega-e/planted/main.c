// device: atxmega8e5
// flags: -DF_CPU=2000000UL -Wall
// A metronome: a knob's contact sets the beat, a speaker ticks.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "beat.h"

ISR(PORTD_INT_vect)
{
    PORTD.INTFLAGS = PIN4_bm;
}

int main(void)
{
    PORTA.DIRSET = 0xFF; // finding: floating-pin PR0 proven
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xEF;
    PORTR.DIRSET = 0x02;
    PORTD.PIN4CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTD.INTMASK = PIN4_bm;
    PORTD.INTCTRL = PORT_INTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    beat_init();
    set_sleep_mode(SLEEP_SMODE_STDBY_gc); // finding: shallow-sleep proven {{power-down}}
    OSC.CTRL = OSC_RC2MEN_bm | OSC_RC32KEN_bm; // finding: oscillator-kept-on RC32K proven
    sei();

    for (;;) {
        sleep_mode();
        beat();
    }
}
