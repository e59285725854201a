// device: attiny45
// flags: -DF_CPU=1000000UL -Wall
// A fridge alarm: a photo diode sees the light that stays on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "beeper.h"

#define DIODE PB4

static volatile uint8_t periods;

ISR(WDT_vect)
{
    periods++;
}

int main(void)
{
    PORTB = _BV(DIODE);
    DDRB = _BV(BEEPER) | _BV(PB2) | _BV(PB3); // finding: floating-pin PB0 proven
    WDTCR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1); // finding: locked-write WDTCR proven
    power_adc_disable();
    power_usi_disable();
    power_timer1_disable();
    power_timer0_enable(); // finding: peripheral-clock-left-on TIMER0 proven
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();

    for (;;) {
        if ((PINB & _BV(DIODE)) == 0 && periods > 60)
            beep();
        sleep_mode(); // finding: brown-out-always-on BOD proven note
    }
}
