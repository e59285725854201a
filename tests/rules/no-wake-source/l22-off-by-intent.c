// device: saml22j18a
// The reset pin ends the off mode; nothing else has to be armed.
#include "saml22.h"

int main(void)
{
    PM->SLEEPCFG.reg = 6;
    for (;;)
        __WFI(); // clean: no-wake-source
}
