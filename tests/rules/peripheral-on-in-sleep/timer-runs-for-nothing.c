// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    ACSR = _BV(ACD);
    WDTCSR |= _BV(WDIE);
    TCCR1B = _BV(CS10); // finding: peripheral-on-in-sleep TIMER1 proven
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
