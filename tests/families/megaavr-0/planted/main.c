// device: atmega4809
// flags: -DF_CPU=3333333UL -Wall
// Counts how often the lid of a grain bin is lifted, and blinks the count every second.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

#define LAMP_bm PIN3_bm
#define LID_bm PIN4_bm

static volatile uint8_t lifts;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
}

ISR(PORTD_PORT_vect)
{
    PORTD.INTFLAGS = LID_bm;
    lifts++;
}

static void park_pins(void)
{
    PORT_t *const ports[] = { &PORTA, &PORTB, &PORTC, &PORTD, &PORTE, &PORTF };

    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        register8_t *control = &ports[i]->PIN0CTRL;

        for (uint8_t pin = 0; pin < 8; pin++) {
            control[pin] = PORT_ISC_INPUT_DISABLE_gc;
        }
    }
    PORTB.PIN1CTRL = 0; // finding: floating-pin PB1 proven warning
    PORTC.OUTCLR = LAMP_bm;
    PORTC.DIRSET = LAMP_bm;
    /* Any pin wakes on both edges. */
    PORTD.PIN4CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;
}

int main(void)
{
    park_pins();
    CLKCTRL.MCLKCTRLB = CLKCTRL_PEN_bm | CLKCTRL_PDIV_4X_gc; // finding: locked-write CLKCTRL.MCLKCTRLB proven warning
    VREF.CTRLB = VREF_ADC0REFEN_bm; // finding: peripheral-on-in-sleep VREF proven warning

    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY); // finding: shallow-sleep proven warning {{power-down}}
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        if (lifts) {
            lifts--;
            PORTC.OUTSET = LAMP_bm;
            _delay_ms(20); // finding: busy-wait-delay main() proven warning
            PORTC.OUTCLR = LAMP_bm;
        }
    }
}
