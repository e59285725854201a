// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    ADCSRA = 0;
    ACSR = _BV(ACD);
    GIMSK = _BV(PCIE);
    PCMSK = 1;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
