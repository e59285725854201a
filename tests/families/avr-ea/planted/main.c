// device: avr16ea28
// flags: -DF_CPU=3333333UL -Wall
// A kitchen timer with one knob that beeps when its time is up.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define BEEPER_bm PIN2_bm
#define KNOB_bm PIN4_bm

static volatile uint8_t minutes;

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = KNOB_bm;
    minutes++;
}

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
    if (minutes) {
        minutes--;
    }
}

static void tell(uint8_t value)
{
    while (!(USART0.STATUS & USART_DREIF_bm)) { // finding: polling-wait USART0.STATUS proven warning
    }
    USART0.TXDATAL = value;
}

int main(void)
{
    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc;
    PORTA.PINCTRLUPD = 0xFF;
    PORTC.PINCTRLUPD = 0xFF;
    PORTD.PINCTRLUPD = 0xFF;
    PORTF.PINCTRLUPD = 0xFF;
    PORTD.PINCTRLCLR = PIN3_bm; // finding: floating-pin PD3 proven warning
    PORTD.DIRSET = BEEPER_bm;
    PORTA.DIRSET = PIN0_bm;
    PORTA.PIN4CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;

    _PROTECTED_WRITE(CLKCTRL.OSCHFCTRLA, CLKCTRL_RUNSTDBY_bm); // finding: oscillator-kept-on OSCHF proven warning
    _PROTECTED_WRITE(CLKCTRL.MCLKCTRLA, CLKCTRL_CLKOUT_bm); // finding: clock-output-on CLKOUT PA7 proven note
    ADC0.CTRLA = ADC_ENABLE_bm | ADC_RUNSTDBY_bm; // finding: peripheral-on-in-sleep ADC0 proven warning
    USART0.BAUD = 1389;
    USART0.CTRLB = USART_TXEN_bm;

    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PER = 59;
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_PRESCALER_DIV1024_gc | RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        tell(minutes);
    }
}
