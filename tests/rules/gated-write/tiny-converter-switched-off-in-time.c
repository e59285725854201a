// device: attiny84
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

static uint8_t last;

static void measure(void)
{
    power_adc_enable();
    ADMUX = 1;
    ADCSRB = _BV(ADLAR);
    ADCSRA = _BV(ADEN) | _BV(ADSC) | _BV(ADPS1) | _BV(ADPS0);
    while (ADCSRA & _BV(ADSC)) {
    }
    last = ADCH;
    ADCSRA = 0;
    power_adc_disable();
}

int main(void)
{
    power_all_disable();
    PORTA = _BV(PA3);
    PCMSK0 = _BV(PCINT3);
    GIMSK = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        measure();
        sleep_mode();
    }
}
