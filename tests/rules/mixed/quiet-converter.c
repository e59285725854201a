// device: atmega1284p
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Conversions in the converter's own sleep mode; only the comparator was forgotten.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t value;

ISR(ADC_vect)
{
    value = ADC;
}

int main(void)
{
    DDRA = 0; // finding: peripheral-on-in-sleep AC proven warning
    PORTA = 0xfe;
    PORTB = 0xff;
    PORTC = 0xff;
    PORTD = 0xff;
    DIDR0 = _BV(ADC0D);
    ADMUX = _BV(REFS0);
    ADCSRA = _BV(ADEN) | _BV(ADIE) | 7;
    set_sleep_mode(SLEEP_MODE_ADC);
    sei();
    for (;;) {
        sleep_mode();
    }
}
