// device: attiny827
// flags: -DF_CPU=3333333UL -Wall
// Counts hailstones by a piezo's edges and blinks the count once a minute.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

#define PIEZO_bm PIN5_bm
#define LAMP_bm PIN0_bm

static volatile uint8_t stones;
static volatile uint8_t is_minute;

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = PIEZO_bm;
    stones++;
}

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    is_minute = 1;
}

int main(void)
{
    for (uint8_t pin = 0; pin < 8; pin++) {
        (&PORTA.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
        (&PORTB.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
        (&PORTC.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
    PORTC.DIRSET = LAMP_bm;
    PORTB.PIN7CTRL = PORT_INVEN_bm; // finding: floating-pin PB7 proven warning
    PORTA.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;

    CLKCTRL.OSC20MCTRLA = CLKCTRL_RUNSTDBY_bm; // finding: locked-write CLKCTRL.OSC20MCTRLA proven warning
    ADC0.CTRLA = ADC_ENABLE_bm | ADC_RUNSTDBY_bm; // finding: peripheral-on-in-sleep ADC0 proven warning

    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY); // finding: shallow-sleep proven warning {{power-down}}
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        if (is_minute && stones) {
            is_minute = 0;
            stones--;
            PORTC.OUTSET = LAMP_bm;
            _delay_ms(15); // finding: busy-wait-delay main() proven warning
            PORTC.OUTCLR = LAMP_bm;
        }
    }
}
