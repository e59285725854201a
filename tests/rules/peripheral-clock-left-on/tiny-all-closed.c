// device: attiny13a
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    power_all_disable();
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: peripheral-clock-left-on ADC TIMER0
    }
}
