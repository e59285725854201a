// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    /* powerlint: be quiet */
    DDRB = 1; // finding@-1: unused-suppression {{not understood}}
    for (;;) {
        sleep_mode();
    }
}
