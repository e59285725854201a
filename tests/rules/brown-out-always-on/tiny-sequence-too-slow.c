// device: attiny85
// option: HFUSE.BODLEVEL = 5
// The second write comes too late, so that it has no effect.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PORTB = _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_enable();
        MCUCR |= _BV(BODS) | _BV(BODSE);
        PORTB |= _BV(PB0);
        DDRB |= _BV(PB0);
        PORTB &= (uint8_t)~_BV(PB0);
        MCUCR = (MCUCR & (uint8_t)~_BV(BODSE)) | _BV(BODS);
        sleep_cpu(); // finding: brown-out-always-on BOD proven note
        sleep_disable();
    }
}
