// device: saml21e17b
// flags: -D__SAML21E17B__ -Wall
// A float switch in a well rings a bell for as long as ten ticks; nothing else ever wakes it.
#include "bell.h"
#include "float_switch.h"
#include "power.h"
#include "saml21.h"

int main(void)
{
    power_init();
    float_switch_init();
    bell_init();
    for (;;) {
        __disable_irq();
        if (!float_switch_has_moved() && !bell_is_due()) {
            __DSB();
            __WFI();
        }
        __enable_irq();
        if (float_switch_take())
            bell_ring();
        bell_tick();
    }
}
