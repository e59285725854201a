// device: attiny85
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The sleep enable is set once and cleared by the handler: from the second pass on the part may not sleep.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PCINT0_vect)
{
    MCUCR &= (uint8_t)~_BV(SE);
    PORTB ^= _BV(PB1);
}

int main(void)
{
    DDRB = _BV(PB1) | _BV(PB0);
    PORTB = _BV(PB2) | _BV(PB3) | _BV(PB4);
    PCMSK = _BV(PCINT2);
    GIMSK = _BV(PCIE);
    MCUCR = _BV(SM1) | _BV(SE);
    sei();
    for (;;)
        __asm__ volatile("sleep"); // finding: sleep-disabled SLEEP
}
