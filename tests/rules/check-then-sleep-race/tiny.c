// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char beats;

ISR(PCINT0_vect) { beats++; }

int main(void)
{
    GIMSK = _BV(PCIE);
    PCMSK = _BV(PCINT3);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (!beats)
            sleep_mode(); // finding: check-then-sleep-race beats proven
        else
            beats--;
    }
}
