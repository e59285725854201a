#include "board.h"

#include <stddef.h>
#include <stdint.h>

struct pair {
    volatile unsigned int *output;
    volatile unsigned int *direction;
    uint16_t inputs;
};

static const struct pair pairs[] = {
    { &PAOUT, &PADIR, 0 },
    { &PBOUT, &PBDIR, 0 },
    { &PCOUT, &PCDIR, CABLE_IN | (BRIDGE << 8) },
    { &PDOUT, &PDDIR, 0 },
    { &PEOUT, &PEDIR, 0 },
    { &PFOUT, &PFDIR, 0 },
    { &PJOUT, &PJDIR, 0 },
};

void board_init(void)
{
    WDTCTL = WDTPW + WDTHOLD;
    for (size_t i = 0; i < sizeof pairs / sizeof *pairs; i++) {
        *pairs[i].output = 0;
        *pairs[i].direction = ~pairs[i].inputs;
    }
    /* No crystal is fitted: the slow clock is the one that draws least. */
    UCSCTL4 = SELA__VLOCLK | SELS__DCOCLKDIV | SELM__DCOCLKDIV;
    UCSCTL3 = SELREF__REFOCLK;
    /* Only the high side is guarded. */
    PMMCTL0 = PMMPW;
    SVSMHCTL &= ~SVMHE;
    SVSMLCTL &= ~(SVMLE | SVSLE);
    PMMCTL0_H = 0x00;
}
