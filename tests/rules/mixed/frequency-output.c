// device: attiny85
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The same light, put to a sleep that stops its timer.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    DDRB = _BV(PB1);
    PORTB = _BV(PB0) | _BV(PB2) | _BV(PB3) | _BV(PB4);
    TCCR0A = _BV(COM0B0) | _BV(WGM01);
    TCCR0B = _BV(CS01); // finding: asleep-in-mode TIMER0 proven warning
    PCMSK = _BV(PCINT4);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
