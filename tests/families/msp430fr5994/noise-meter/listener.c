#include "listener.h"

#include "hall.h"

static volatile uint16_t count;

/* The comparator in its slowest setting holds the sound against a part of the supply, all night long, without a clock. */
void listener_init(void)
{
    CECTL0 = CEIPEN | CEIPSEL_1;
    CECTL2 = CERS_1 | CERSEL | 8;
    CECTL1 = CEON | CEPWRMD_2;
    CEINT = CEIE;
}

uint16_t listener_count(void)
{
    uint16_t counted;

    __disable_interrupt();
    counted = count;
    __enable_interrupt();
    return counted;
}

__attribute__((interrupt(COMP_E_VECTOR))) void on_loud(void)
{
    CEINT &= ~CEIFG;
    if (count < UINT16_MAX)
        count++;
}
