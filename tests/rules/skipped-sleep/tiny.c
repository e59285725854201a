// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char converting;

ISR(ADC_vect) { converting = 0; }
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    ADCSRA = _BV(ADEN) | _BV(ADIE);
    WDTCR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        if (converting) // finding: skipped-sleep main() proven
            continue;
        sleep_mode();
        converting = 1;
        ADCSRA |= _BV(ADSC);
    }
}
