// device: atmega1284p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// The period of the watchdog is set without the sequence that it needs; the second time is right.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    PORTA = 0xff;
    PORTB = 0xff;
    PORTC = 0xff;
    PORTD = 0xff;
    WDTCSR = _BV(WDIE) | _BV(WDP3); // finding: locked-write WDTCSR proven
    cli();
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;)
        sleep_mode();
}
