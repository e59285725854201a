// device: atmega328p
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// An edge is to wake the part from a mode that has no clock to see it, and nothing else wakes it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t rings;

ISR(INT1_vect)
{
    rings++;
    for (volatile uint16_t n = 0; n < 5000; n++) // finding: busy-wait-delay INT1_vect() proven warning
        ;
}

int main(void)
{
    PORTB = 0xff;
    PORTC = 0xff;
    PORTD = 0xff;
    EICRA |= _BV(ISC11);
    EIMSK |= _BV(INT1); // finding: asleep-in-mode INT1 proven error
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
again:
    sleep_mode();
    goto again;
}
