// device: saml22j18a
// The display's bus clock is open after reset; the program closed it.
#include "saml22.h"

int main(void)
{
    MCLK->APBCMASK.reg = 0;
    SLCD->CTRLA.reg = SLCD_CTRLA_DUTY(3); // finding: gated-write SLCD.CTRLA proven
    for (;;)
        ;
}
