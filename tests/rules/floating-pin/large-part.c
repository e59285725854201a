// device: atmega1284p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRA = 0xff;
    DDRB = 0xff;
    PORTC = 0xff;
    DDRD = 0x3f; // finding: floating-pin PD6 PD7 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
