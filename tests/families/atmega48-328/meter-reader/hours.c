#include "hours.h"

#include "m328pb.h"

#define EIGHTS 450u

static volatile uint16_t eights;

ISR(WDT_vect)
{
    eights++;
}

/* Its longest period is eight seconds. */
void hours_init(void)
{
    cli();
    WDTCSR = (1 << WDCE) | (1 << WDE);
    WDTCSR = (1 << WDIE) | (1 << WDP3) | (1 << WDP0);
    sei();
}

void hours_wait(void)
{
    cli();
    while (eights < EIGHTS) {
        SMCR = 1 << SM1 | 1 << SE;
        sei();
        sleep_cpu();
        SMCR = 0;
        cli();
    }
    eights = 0;
    sei();
}
