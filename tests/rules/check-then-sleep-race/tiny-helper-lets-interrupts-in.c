// device: attiny1614
// Interrupts are off for the test; a helper that is called before the sleep switches them on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t is_due;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    is_due = 1;
}

static void lamp_off(void)
{
    cli();
    VPORTB.OUT &= (uint8_t)~PIN0_bm;
    sei();
    PORTB.DIRCLR = PIN0_bm;
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;) {
        cli();
        if (!is_due) {
            lamp_off();
            sleep_cpu(); // finding: check-then-sleep-race is_due proven
        }
        is_due = 0;
        sei();
        PORTB.OUTSET = PIN0_bm;
    }
}
