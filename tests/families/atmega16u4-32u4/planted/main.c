// device: atmega16u4
// flags: -DF_CPU=8000000UL -Wall
// A clicker for lectures: a button wakes it, it should then talk to the lectern.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "bus.h"

EMPTY_INTERRUPT(INT2_vect)

int main(void)
{
    PORTB = 0;
    DDRB = 0xFF;
    PORTC = 0;
    DDRC = _BV(PC6) | _BV(PC7);
    PORTD = _BV(PD2);
    DDRD = (uint8_t)~_BV(PD2);
    PORTE = 0;
    DDRE = _BV(PE6); // finding: floating-pin PE2 proven
    PORTF = 0;
    DDRF = _BV(PF0) | _BV(PF1) | _BV(PF4) | _BV(PF5) | _BV(PF6) | _BV(PF7);
    ACSR = _BV(ACD);
    power_all_disable();
    power_twi_enable(); // finding: peripheral-clock-left-on TWI proven
    bus_init();
    EIMSK = _BV(INT2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();

    for (;;) {
        sleep_mode();
        bus_click();
    }
}
