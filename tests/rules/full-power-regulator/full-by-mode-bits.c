// device: avr128da48
// Told to stay full, the regulator does not give way in power-down.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    _PROTECTED_WRITE(SLPCTRL.VREGCTRL, SLPCTRL_PMODE_FULL_gc);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: full-power-regulator VREG proven warning
        sleep_disable();
    }
}
