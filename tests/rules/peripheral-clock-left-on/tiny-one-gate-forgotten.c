// device: attiny85
// The mask closes three of the part's four gates.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PRR = _BV(PRTIM1) | _BV(PRUSI) | _BV(PRADC); // finding: peripheral-clock-left-on TIMER0 proven
    PORTB = _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: peripheral-clock-left-on TIMER1 USI ADC
    }
}
