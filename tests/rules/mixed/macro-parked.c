// device: atmega1284p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Two ports parked by macros that paste names; a list macro forgets one port. The debug port is switched off by its sequence.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define PORT_LIST(X) X(A) X(B) X(D)
#define PARK(n) PORT##n = 0xff;

EMPTY_INTERRUPT(INT2_vect)

int main(void)
{
    PORT_LIST(PARK) // finding: floating-pin PC0 PC1 PC2 PC3 PC4 PC5 PC6 PC7 proven note
    MCUCR = _BV(JTD);
    MCUCR = _BV(JTD);
    EIMSK = _BV(INT2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
