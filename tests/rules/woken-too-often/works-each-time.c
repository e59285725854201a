// device: atmega328p
// Every wake-up looks at a key: the count is not all that it does.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t pressed, seconds;

ISR(WDT_vect)
{
    pressed = (uint8_t)(pressed << 1 | (PIND & 1));
    seconds++;
}

int main(void)
{
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP1); // clean: woken-too-often WDT
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        if (seconds >= 8) {
            seconds = 0;
            PORTB ^= 1;
        }
    }
}
