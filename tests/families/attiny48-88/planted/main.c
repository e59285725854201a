// device: attiny48
// flags: -DF_CPU=1000000UL -Wall
// A chicken coop's door: it opens at dawn, which a photo resistor tells.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "door.h"

ISR(PCINT1_vect)
{
    door_is_pushed = 1;
}

int main(void)
{
    PORTA = 0;
    DDRA = 0x0F;
    PORTB = 0;
    DDRB = 0xFF;
    PORTC = _BV(PC3);
    DDRC = (uint8_t)~(_BV(PC3) | _BV(PC0));
    PORTD = 0;
    DDRD = 0xFF;
    DIDR0 = _BV(ADC0D);
    ACSR = _BV(ACD);
    PORTCR = _BV(PUDC); // finding: floating-pin PC3 board-dependent
    power_all_disable();
    power_spi_enable(); // finding: peripheral-clock-left-on SPI proven
    door_init();
    PCMSK1 = _BV(PCINT11);
    PCICR = _BV(PCIE1);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();

    for (;;) {
        sleep_mode();
        door_check();
    }
}
