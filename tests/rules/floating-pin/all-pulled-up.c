// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTB = 0xff;
    PORTC = 0xff;
    PORTD = 0xff;
    // clean: floating-pin PD0..PD7
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
