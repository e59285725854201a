// device: attiny1624
// board: PB2: { load: "lamp", active: high, milliamps: 2 }
// The lamp is toggled twice on every pass.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

static void blink(void)
{
    PORTB.OUTTGL = PIN2_bm;
    for (volatile uint8_t i = 0; i < 10; i++) {
    }
    PORTB.OUTTGL = PIN2_bm;
}

int main(void)
{
    PORTB.DIRSET = PIN2_bm;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: load-driven-in-sleep PB2
        blink();
    }
}
