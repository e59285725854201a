// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTA.DIRSET = 0xff;
    PORTC.DIRSET = 0xff;
    PORTD.DIRSET = 0xff;
    PORTR.DIRSET = 0x03;
    PORTC.DIRCLR = PIN4_bm | PIN5_bm; // finding: floating-pin PC4 PC5 proven warning
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
