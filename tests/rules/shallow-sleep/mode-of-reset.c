// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCR |= _BV(WDIE); // finding: shallow-sleep {{power-down}}
    sei();
    for (;;) {
        sleep_mode();
    }
}
