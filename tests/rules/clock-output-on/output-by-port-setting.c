// device: atxmega32a4u
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/interrupt.h>

ISR(PORTD_INT0_vect)
{
}

int main(void)
{
    PORTC.DIRSET = 0x80;
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PC7_gc; // finding: clock-output-on CLKOUT PC7
    SLEEP.CTRL = SLEEP_SMODE_IDLE_gc | SLEEP_SEN_bm;
    sei();
    for (;;) {
        sleep_cpu();
    }
}
