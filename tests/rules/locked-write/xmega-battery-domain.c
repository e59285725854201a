// device: atxmega256a3bu
// The registers of the battery's domain take no write before access is enabled.
#include <avr/io.h>
#include <avr/sleep.h>
#include <stdbool.h>

int main(void)
{
    RTC32.PER = 59; // finding: locked-write RTC32.PER proven
    VBAT.CTRL = VBAT_ACCEN_bm | VBAT_XOSCEN_bm | VBAT_XOSCSEL_bm;
    RTC32.PER = 59;
    RTC32.CTRL = RTC32_ENABLE_bm;
    VBAT.CTRL |= VBAT_RESET_bm; // finding: locked-write VBAT.CTRL proven

    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    for (;;)
        sleep_mode();
}
