#include "board.h"

#define DRIVE_LOW(port, mask)                                                                                          \
    do {                                                                                                               \
        P##port##OUT &= (uint8_t)~(mask);                                                                              \
        P##port##DIR |= (mask);                                                                                        \
    } while (0)

void board_init(void)
{
    WDTCTL = WDTPW + WDTHOLD;
    DRIVE_LOW(1, 0xFF);
    DRIVE_LOW(2, 0xFF & ~(RADIATOR | ROOM));
    DRIVE_LOW(3, 0xFF);
    DRIVE_LOW(4, 0xFF);
    /* There is no crystal: its pins are ports, and ACLK comes from within. */
    P2SEL = 0;
    BCSCTL3 = LFXT1S_2;
    DCOCTL = CALDCO_1MHZ;
    BCSCTL1 = CALBC1_1MHZ;
}
