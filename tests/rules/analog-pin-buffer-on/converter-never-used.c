// device: atmega328p
// Reset selects channel 0, but nobody ever switches the converter on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    ADMUX = 2;
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
