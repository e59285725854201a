// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK0 = 1;
    PCICR = _BV(PCIE0);
    ASSR |= _BV(AS2); // finding: oscillator-kept-on timer-oscillator proven
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
