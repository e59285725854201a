// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

enum state { MEASURE, SEND, REST };

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    enum state state = MEASURE;
    for (;;) {
        switch (state) {
        case MEASURE:
            PORTB = 1;
            state = SEND;
            break;
        case SEND:
            PORTB = 2;
            state = REST;
            break;
        case REST:
            sleep_mode();
            state = MEASURE;
            break;
        }
    }
}
