// device: attiny85
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// A button wakes the part by level; the transmitter is keyed by hand.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

ISR(INT0_vect)
{
    GIMSK &= (uint8_t)~_BV(INT0);
}

int main(void)
{
    DDRB = _BV(PB1);
    PORTB = _BV(PB2); // finding: floating-pin PB0 PB3 PB4 proven note
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        GIMSK |= _BV(INT0);
        sei();
        sleep_mode();
        cli();
        for (uint8_t bit = 0; bit < 38; bit++) {
            PINB = _BV(PB1);
            _delay_us(500);
        }
        _delay_ms(40); // finding: busy-wait-delay main() proven warning {{40 ms}}
    }
}
