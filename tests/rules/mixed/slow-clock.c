// device: atmega1284p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The prescaler is written without its sequence, and sleep without its enable bit.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT3_vect)

static void clock_slow(uint8_t divider)
{
    CLKPR = divider; // finding: locked-write CLKPR proven
}

int main(void)
{
    PORTA = PORTB = PORTC = PORTD = 0xff;
    clock_slow(3);
    PCMSK3 = _BV(PCINT27);
    PCICR = _BV(PCIE3);
    SMCR = _BV(SM1);
    sei();
    for (;;) {
        __asm__ volatile("sleep"); // finding: sleep-disabled SLEEP proven error
    }
}
