// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    SPCR = _BV(SPE) | _BV(MSTR);
    TWCR = _BV(TWEN);
    for (;;) {
        SPDR = 0x55;
        while (!(SPSR & (1 << SPIF))) { // finding: polling-wait SPSR
        }
        TWCR = _BV(TWINT) | _BV(TWSTA) | _BV(TWEN);
        do { // finding: polling-wait TWCR
        } while (!(TWCR & (1 << TWINT)));
        sleep_mode();
    }
}
