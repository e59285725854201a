// device: saml22g17a
// flags: -D__SAML22G17A__ -Wall
// Counts a gas meter's turns by a reed contact, and hands the count to a radio's serial line every 64 turns.
#include "board.h"
#include "link.h"
#include "reed.h"
#include "saml22.h"

#define TURNS_A_REPORT 64u

int main(void)
{
    uint32_t reported = 0;

    board_init();
    reed_init();
    link_init();
    for (;;) {
        __disable_irq();
        if (reed_turns() - reported < TURNS_A_REPORT) {
            __DSB();
            __WFI();
        }
        __enable_irq();
        if (reed_turns() - reported >= TURNS_A_REPORT) {
            reported += TURNS_A_REPORT;
            link_send((uint8_t)(reported / TURNS_A_REPORT));
        }
    }
}
