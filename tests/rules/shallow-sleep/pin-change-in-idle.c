// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK0 = 1;
    PCICR = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep proven warning {{power-down}}
    sei();
    for (;;) {
        // Data sheet 8271H: 6 cycles of the 8 MHz oscillator with the factory's fuses, and the CPU halted for 4 of its own.
        sleep_mode(); // related: shallow-sleep {{waking from power-down takes 6 cycles of 8 MHz and 4 of the CPU}} {{from idle 4 cycles of the CPU}}
    }
}
