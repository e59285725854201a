// device: atmega328p
// Power-down cuts the input buffers: the pins float only while awake. A pin with a pin-change interrupt keeps its buffer.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT2_vect)

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xe0; // finding: floating-pin PD0 PD1 PD3 PD4 proven note {{while the CPU is awake}}
    // finding@-1: floating-pin PD2 board-dependent note
    PCMSK2 = _BV(PCINT18);
    PCICR = _BV(PCIE2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
