// device: atmega1284p
// flags: -DF_CPU=8000000UL -Wall
// A stream gauge: an echo sounder's supply is switched on for each measurement, the level goes out by radio.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "sounder.h"

ISR(TIMER2_OVF_vect)
{
}

static void park(void)
{
    PORTA = 0;
    DDRA = 0xFF;
    PORTB = 0;
    DDRB = 0xFE; // finding: floating-pin PB0 proven
    PORTC = 0;
    DDRC = 0x3F;
    PORTD = 0;
    DDRD = 0xFF;
}

int main(void)
{
    park();
    ACSR = _BV(ACD);
    power_all_disable();
    power_timer2_enable();
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS21);
    TIMSK2 = _BV(TOIE2);
    power_spi_enable(); // finding: peripheral-clock-left-on SPI proven
    sounder_init();
    set_sleep_mode(SLEEP_MODE_EXT_STANDBY); // finding: shallow-sleep proven {{power-save}}
    sei();

    for (;;) {
        sounder_measure();
        sleep_mode();
    }
}
