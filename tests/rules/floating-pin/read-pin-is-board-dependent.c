// device: atmega328p
// The program reads PD2: the board may drive it. Nobody reads PD3.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xf3; // finding: floating-pin PD2 board-dependent note {{board file}}
    // finding@-1: floating-pin PD3 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        if (PIND & _BV(PD2)) {
            PORTB ^= _BV(PB0);
        }
        sleep_mode();
    }
}
