// device: avr64ea48
// Two channels through one helper; one of the pins has its buffer off.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t levels[2];

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

static uint16_t convert(uint8_t channel)
{
    ADC0.MUXPOS = channel; // finding: analog-pin-buffer-on PD4
    ADC0.COMMAND = ADC_MODE_SINGLE_12BIT_gc | ADC_START_IMMEDIATE_gc;
    while (!(ADC0.INTFLAGS & ADC_RESRDY_bm)) {
    }
    return (uint16_t)ADC0.RESULT;
}

int main(void)
{
    PORTD.PIN3CTRL = PORT_ISC_INPUT_DISABLE_gc;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: analog-pin-buffer-on PD3
        ADC0.CTRLA = ADC_ENABLE_bm;
        levels[0] = convert(3);
        levels[1] = convert(4);
        ADC0.CTRLA = 0;
    }
}
