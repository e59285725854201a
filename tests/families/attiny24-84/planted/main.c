// device: attiny44a
// flags: -DF_CPU=1000000UL -Wall
// A level switch in a cistern: a float's contact starts the pump for a while.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "pump.h"

#define FLOAT_CONTACT PA0

ISR(PCINT0_vect)
{
    pump_due = 1;
}

int main(void)
{
    PORTA = _BV(FLOAT_CONTACT);
    DDRA = (uint8_t)~(_BV(FLOAT_CONTACT) | _BV(PA6));
    PORTB = 0;
    DDRB = _BV(PB0) | _BV(PB1) | _BV(PB2);
    ACSR = _BV(ACBG); // finding: peripheral-on-in-sleep AC proven
    DIDR0 = _BV(ADC2D); // finding: floating-pin PA6 proven
    power_all_disable();
    power_usi_enable(); // finding: peripheral-clock-left-on USI proven
    PCMSK0 = _BV(PCINT0);
    GIMSK = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_STANDBY); // finding: shallow-sleep proven {{power-down}}
    sei();

    for (;;) {
        sleep_mode();
        pump_run();
    }
}
