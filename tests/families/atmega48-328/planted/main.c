// device: atmega168pa
// flags: -DF_CPU=1000000UL -Wall
// A letter box that tells by a lamp at the door, over a pair of wires, that the flap has been lifted.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "line.h"

#define FLAP PD3

static volatile uint8_t lifted;

ISR(PCINT2_vect)
{
    lifted = 1;
}

static void park_pins(void)
{
    PORTB = 0;
    DDRB = 0xFF;
    PORTC = 0;
    DDRC = 0x3F;
    PORTD = _BV(FLAP);
    DDRD = (uint8_t)~(_BV(FLAP) | _BV(LINE_IN) | _BV(PD7)); // finding: floating-pin PD7 proven warning
}

int main(void)
{
    park_pins();
    ACSR = _BV(ACD);
    power_all_disable();
    line_init();

    PCMSK2 = _BV(PCINT19);
    PCICR = _BV(PCIE2);
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep proven warning {{power-down}}

    for (;;) {
        cli();
        if (!lifted) {
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
        }
        sei();
        if (lifted) {
            lifted = 0;
            line_report();
        }
    }
}
