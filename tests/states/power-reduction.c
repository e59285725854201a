// device: atmega1284p
// flags: -DF_CPU=8000000UL
// Clock gates closed and opened through the library's macros and by hand.
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

int main(void)
{
    power_all_disable();
    power_timer2_enable();
    power_adc_enable();
    ADCSRA = _BV(ADPS2);
    power_adc_disable();
    PRR0 &= ~_BV(PRTWI);
    PORTA = 0xFF;
    PORTB = 0xFF;
    PORTC = 0xFF;
    PORTD = 0xFF;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: PRR0.PRTWI = 0, PRR0.PRADC = 1, PRR0.PRTIM2 = 0, PRR0.PRSPI = 1
}
