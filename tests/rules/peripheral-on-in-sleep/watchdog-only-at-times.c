// device: attiny85
// The watchdog ticks only while a countdown runs. Whenever it is on it also wakes the part.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t left;

ISR(WDT_vect)
{
    left--;
}

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK = _BV(PCINT1);
    GIMSK = _BV(PCIE);
    ACSR = _BV(ACD);
    ADCSRA = 0;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        uint8_t tick = left > 0;

        if ((PINB & _BV(PB1)) == 0)
            left = 10;
        WDTCR |= _BV(WDCE) | _BV(WDE);
        WDTCR = tick ? _BV(WDIE) | _BV(WDP2) : 0;
        sleep_mode(); // clean: peripheral-on-in-sleep WDT
    }
}
