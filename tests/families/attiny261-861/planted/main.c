// device: attiny461
// flags: -DF_CPU=1000000UL -Wall
// A bicycle lamp: a timer dims it, a key switches it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "lamp.h"

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    PORTA = 0;
    DDRA = 0xF7; // finding: floating-pin PA3 proven
    PORTB = _BV(PB6);
    DDRB = (uint8_t)~_BV(PB6);
    ACSRA = _BV(ACD);
    power_adc_disable();
    power_usi_disable();
    power_timer0_disable();
    power_adc_enable(); // finding: peripheral-clock-left-on ADC proven
    lamp_init();
    MCUCR = 0;
    GIMSK = _BV(INT0);
    sei();

    for (;;) {
        __asm__ __volatile__("sleep" ::: "memory"); // finding: sleep-disabled SLEEP proven
        lamp_next();
    }
}
