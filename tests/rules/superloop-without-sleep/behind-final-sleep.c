// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// Interrupts are off: nothing ends this sleep, so the loop behind it is never reached.
int main(void)
{
    DDRB = 0xff;
    cli();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    sleep_cpu();
    for (;;) {
    }
}
