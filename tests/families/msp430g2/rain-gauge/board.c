#include "board.h"

#include <stdint.h>

struct parking {
    volatile uint8_t *direction;
    volatile uint8_t *output;
    uint8_t outputs;
};

/* Everything that is not wired is driven low, port 3 too, which this package keeps inside. */
static const struct parking parking[] = {
    { &P1DIR, &P1OUT, (uint8_t)~(CONTACT | CABLE) },
    { &P2DIR, &P2OUT, 0xFF },
    { &P3DIR, &P3OUT, 0xFF },
};

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    for (uint8_t i = 0; i < sizeof parking / sizeof parking[0]; i++) {
        *parking[i].output = 0;
        *parking[i].direction = parking[i].outputs;
    }
    /* There is no crystal at P2.6 and P2.7. */
    P2SEL &= (uint8_t)~(BIT6 | BIT7);
    P2SEL2 &= (uint8_t)~(BIT6 | BIT7);
    if (CALBC1_1MHZ != 0xFF) {
        DCOCTL = 0;
        BCSCTL1 = CALBC1_1MHZ;
        DCOCTL = CALDCO_1MHZ;
    }
}
