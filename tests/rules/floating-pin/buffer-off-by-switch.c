// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // An analog pin that is not used, with its buffer off, does not float.
    DDRB = 0xff;
    DDRC = 0x70;
    DIDR0 = 0x0f;
    DDRD = 0xff;
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
