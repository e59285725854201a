#include "wheel.h"

#include "board.h"

void wheel_start(void)
{
    ESIAFE = 0x0410;
    ESITSM = 0x0005;
    ESIPSM = 0x0040;
    ESIINT2 = 0;
    ESIINT1 = ESIIE3;
    ESICTL = ESIEN;
}

__attribute__((interrupt(ESCAN_IF_VECTOR))) void on_hundred(void)
{
    ESIINT2 &= ~ESIIFG3;
    __bic_SR_register_on_exit(LPM3_bits);
}
