// device: atmega328pb
// The 32-pin packages bring out a fourth port.
#include "m328pb.h"

ISR(PCINT3_vect) {}

int main(void)
{
    PORTB = 0xFF;
    PORTC = 0x7F;
    PORTD = 0xFF;
    PORTE = 0x01; // finding: floating-pin PE1 PE2 PE3 proven note
    PCMSK3 = 1 << PCINT24;
    PCICR = 1 << PCIE3;
    sei();
    for (;;) {
        SMCR = 1 << SM1 | 1 << SE;
        sleep_cpu(); // clean: floating-pin PB0 PE0
    }
}
