// device: attiny85
// The converter's own switch is out of reach once its gate is closed: it stays on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

static uint8_t last;

static void measure(void)
{
    power_adc_enable();
    ADMUX = _BV(ADLAR) | 1;
    ADCSRA = _BV(ADEN) | _BV(ADSC) | _BV(ADPS1) | _BV(ADPS0);
    while (ADCSRA & _BV(ADSC)) {
    }
    last = ADCH;
    power_adc_disable();
    ADCSRA = 0; // finding: gated-write ADCSRA proven warning {{PRR.PRADC}}
}

int main(void)
{
    PORTB = _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        measure();
        sleep_mode();
    }
}
