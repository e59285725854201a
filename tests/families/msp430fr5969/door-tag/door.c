#include "door.h"

#include <stdint.h>

#include "board.h"
#include "timeout.h"

static volatile bool has_happened;
static uint32_t openings;

void door_init(void)
{
    P1IES &= (uint8_t)~CONTACT;
    P1IFG = 0;
    P1IE = CONTACT;
}

/* With the door closed nothing needs a clock; while it is open the low-frequency oscillator times it. */
void door_wait(void)
{
    __disable_interrupt();
    while (!has_happened) {
        if (timeout_is_running())
            __bis_SR_register(LPM3_bits | GIE);
        else
            __bis_SR_register(LPM4_bits | GIE);
        __disable_interrupt();
    }
    has_happened = false;
    __enable_interrupt();
}

void door_happened(void)
{
    has_happened = true;
}

bool door_is_open(void)
{
    return (P1IN & CONTACT) != 0;
}

__attribute__((interrupt(PORT1_VECTOR))) void on_contact(void)
{
    if (P1IV == P1IV_P1IFG4) {
        if ((P1IES & CONTACT) == 0)
            openings++;
        P1IES ^= CONTACT;
        door_happened();
    }
    __bic_SR_register_on_exit(LPM4_bits);
}
