// device: atmega328pb
#include "m328pb.h"

ISR(PCINT3_vect) {}

int main(void)
{
    PCMSK3 = 1 << PCINT24;
    PCICR = 1 << PCIE3;
    sei();
    for (;;) {
        SMCR = 1 << SM1 | 1 << SE;
        sleep_cpu(); // clean: no-wake-source SLEEP
    }
}
