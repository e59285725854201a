// device: attiny85
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Nothing to complain about.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

ISR(WDT_vect)
{
    PINB = _BV(PB3);
}

int main(void)
{
    clock_prescale_set(clock_div_8);
    DDRB = 0x1f;
    power_all_disable();
    cli();
    WDTCR = _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDIE) | _BV(WDP2);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    while (1) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
    }
}
