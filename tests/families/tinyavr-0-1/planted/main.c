// device: attiny816
// flags: -DF_CPU=3333333UL -Wall
// A cat flap that tells its state over one wire and counts passages.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define FLAP_bm PIN3_bm
#define LATCH_bm PIN4_bm

static volatile uint8_t passages;

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = FLAP_bm;
    passages++;
}

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
    passages = 0;
}

static void tell(uint8_t value)
{
    while (!(USART0.STATUS & USART_DREIF_bm)) { // finding: polling-wait USART0.STATUS proven warning
    }
    USART0.TXDATAL = value;
}

int main(void)
{
    for (uint8_t pin = 1; pin < 8; pin++) {
        (&PORTA.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
    for (uint8_t pin = 0; pin < 6; pin++) {
        (&PORTB.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
    PORTC.DIR = 0x07; // finding: floating-pin PC3 proven warning
    PORTA.DIRSET = LATCH_bm;
    PORTA.PIN3CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;

    _PROTECTED_WRITE(CLKCTRL.OSC20MCTRLA, CLKCTRL_RUNSTDBY_bm); // finding: oscillator-kept-on OSC20M proven warning
    ADC0.CTRLA = ADC_ENABLE_bm | ADC_RUNSTBY_bm; // finding: peripheral-on-in-sleep ADC0 proven warning

    _PROTECTED_WRITE(CLKCTRL.MCLKCTRLA, CLKCTRL_CLKOUT_bm); // finding: clock-output-on CLKOUT PB5 proven note

    USART0.BAUD = 1389;
    USART0.CTRLB = USART_TXEN_bm;
    PORTB.DIRSET = PIN2_bm;

    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_PRESCALER_DIV1024_gc | RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        tell(passages);
    }
}
