// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

ISR(INT0_vect)
{
    _delay_us(1500); // finding: busy-wait-delay INT0_vect() {{1.5 ms}} {{interrupt handler}}
}

int main(void)
{
    EIMSK = _BV(INT0);
    sei();
    for (;;) {
        sleep_mode();
    }
}
