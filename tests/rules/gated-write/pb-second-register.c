// device: atmega328pb
// The 328PB has two power reduction registers: the third timer's bit is in the second, the second serial port's in the first.
#include "m328pb.h"

ISR(PCINT3_vect) {}

int main(void)
{
    PRR0 = 1 << PRUSART1;
    PRR1 = 1 << PRTIM3;
    UBRR1L = 12; // finding: gated-write UBRR1L proven
    TCCR3B = 1 << WGM32; // finding: gated-write TCCR3B proven
    SPCR1 = 0x40;
    PCMSK3 = 1 << PCINT24;
    PCICR = 1 << PCIE3;
    sei();
    for (;;) {
        SMCR = 1 << SM1 | 1 << SE;
        sleep_cpu();
    }
}
