// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

ISR(PCINT0_vect)
{
    _delay_us(50);
}

int main(void)
{
    PCICR = _BV(PCIE0);
    sei();
    for (;;) {
        sleep_mode();
    }
}
