#include "board.h"

struct port {
    volatile uint8_t *out;
    volatile uint8_t *dir;
    volatile uint8_t *ren;
    uint8_t keys;
};

static const struct port ports[] = {
    { &P1OUT, &P1DIR, &P1REN, ROWS },
    { &P2OUT, &P2DIR, &P2REN, 0 },
    { &P3OUT, &P3DIR, &P3REN, 0 },
    { &P4OUT, &P4DIR, &P4REN, 0 },
    { &P5OUT, &P5DIR, &P5REN, 0 },
    { &P6OUT, &P6DIR, &P6REN, 0 },
};

void board_init(void)
{
    WDTCTL = WDTPW + WDTHOLD;
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        *ports[i].out = ports[i].keys;
        *ports[i].ren = ports[i].keys;
        *ports[i].dir = (uint8_t)~ports[i].keys;
    }
    BCSCTL3 = LFXT1S_2;
    BCSCTL1 = CALBC1_1MHZ;
    DCOCTL = CALDCO_1MHZ;
}
