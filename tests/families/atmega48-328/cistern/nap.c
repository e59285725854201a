#include "nap.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/wdt.h>

EMPTY_INTERRUPT(WDT_vect)

void nap_init(void)
{
    wdt_reset();
    MCUSR = 0;
    WDTCSR = (1 << WDCE) | (1 << WDE);
    WDTCSR = (1 << WDIE) | (1 << WDP3);
    sei();
}

void nap(void)
{
    SMCR = (1 << SM1) | (1 << SE);
    __asm__ __volatile__("sleep" ::: "memory");
    SMCR = 0;
}
