// device: atmega1284p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void sleep_in(uint8_t mode)
{
    set_sleep_mode(mode);
    cli();
    sleep_enable();
    sei();
    sleep_cpu();
    sleep_disable();
}

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        sleep_in(SLEEP_MODE_PWR_DOWN);
        sleep_in(SLEEP_MODE_IDLE);
    }
}
