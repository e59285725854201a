// device: attiny4313
// option: HFUSE.BODLEVEL = 4
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

static void sleep_without_detector(void)
{
    sleep_enable();
    BODCR = _BV(BPDS) | _BV(BPDSE);
    BODCR = _BV(BPDS);
    sleep_cpu();
    sleep_disable();
}

int main(void)
{
    PORTD = _BV(PD2);
    GIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    // clean: brown-out-always-on BOD
    for (;;) {
        sleep_without_detector();
    }
}
