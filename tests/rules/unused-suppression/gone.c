// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // powerlint: allow busy-wait-delay (once there was one)
    DDRB = 1; // finding@-1: unused-suppression busy-wait-delay warning
    for (;;) {
        sleep_mode();
    }
}
