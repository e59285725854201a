// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // powerlint: allow warm-pin (the name is wrong)
    DDRB = 1; // finding@-1: unused-suppression warm-pin {{no rule}}
    for (;;) {
        sleep_mode();
    }
}
