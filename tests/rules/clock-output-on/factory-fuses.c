// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE);
    // clean: clock-output-on CLKO
    for (;;) {
        sleep_mode();
    }
}
