// device: atmega1284p
// option: EFUSE.BODLEVEL = 5
// The long sleep stops the detector; somebody added a short one and did not.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)
EMPTY_INTERRUPT(INT0_vect)

static void sleep_long(void)
{
    sleep_enable();
    sleep_bod_disable();
    sleep_cpu();
    sleep_disable();
}

static void sleep_short(void)
{
    sleep_enable();
    sleep_cpu(); // finding: brown-out-always-on BOD proven note
    sleep_disable();
}

int main(void)
{
    EIMSK = _BV(INT0);
    DDRA = _BV(PA0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_long();
        PORTA ^= _BV(PA0);
        MCUCR &= (uint8_t)~_BV(BODS);
        sleep_short();
        PORTA ^= _BV(PA0);
    }
}
