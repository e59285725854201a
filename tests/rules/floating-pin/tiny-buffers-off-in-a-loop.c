// device: attiny816
// The pin control registers are reached by a pointer that counts along; pads that the package lacks are parked with the others.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

static void park(PORT_t *port)
{
    for (register8_t *control = &port->PIN0CTRL; control <= &port->PIN7CTRL; control++) {
        *control = PORT_ISC_INPUT_DISABLE_gc;
    }
}

int main(void)
{
    park(&PORTA);
    park(&PORTB);
    park(&PORTC);
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: floating-pin PA1 PA7 PB0 PB5 PC0 PC3
    }
}
