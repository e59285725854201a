#include "power.h"

#include <msp430.h>

void power_init(void)
{
    PMMCTL0_H = PMMPW_H;
    SVSMHCTL = SVSHE | SVSHFP | SVSHMD;
    PMMCTL0_H = 0;
    SVSMLCTL &= ~(SVSLE | SVMLE); // finding: locked-write SVSMLCTL proven
}
