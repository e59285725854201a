// device: attiny84
// board: PA1: { driven: low }
// board: PA2: { driven: low }
// The part's switch for all pull-ups is thrown before sleep and back after it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

static void rest(void)
{
    MCUCR |= _BV(PUD);
    sleep_mode();
    MCUCR &= (uint8_t)~_BV(PUD);
}

int main(void)
{
    PORTA = _BV(PA1) | _BV(PA2);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        rest(); // clean: pull-against-level PA1 PA2
    }
}
