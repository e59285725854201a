// device: atmega328p
// A function without a body may do anything to the pins.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

extern void board_init(void);

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xfc; // finding: floating-pin PD0 PD1 possible note {{board_init()}}
    board_init();
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
