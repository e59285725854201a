// device: saml22j18a
// Backup ends by what was armed, and by the reset pin as any mode; a program that arms nothing has no way back of its own.
#include "saml22.h"

int main(void)
{
    PM->SLEEPCFG.reg = 5;
    for (;;)
        __WFI(); // finding: no-wake-source SLEEP
}
