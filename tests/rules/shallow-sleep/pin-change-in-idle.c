// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK0 = 1;
    PCICR = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep proven warning {{power-down}}
    sei();
    for (;;) {
        sleep_mode();
    }
}
