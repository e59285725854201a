// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// No interrupt tells that the asynchronous timer has taken a value over.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    ASSR = _BV(AS2);
    for (;;) {
        OCR2A = 0;
        while (ASSR & _BV(OCR2AUB)) {
        }
        sleep_mode();
    }
}
