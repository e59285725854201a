// device: atxmega32e5
// flags: -DF_CPU=2000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Never sleeps: polls the converter's flag and burns time between samples.
#include <avr/io.h>
#include <util/delay.h>

static volatile uint16_t level;

int main(void)
{
    PORTA.DIR = 0xfe;
    PORTA.PIN0CTRL = PORT_ISC_INPUT_DISABLE_gc;
    PORTC.DIR = 0xff;
    PORTD.DIR = 0xff;
    PORTR.DIR = 0x03;
    ADCA.CTRLA = ADC_ENABLE_bm;
    ADCA.CH0.CTRL = ADC_CH_INPUTMODE_SINGLEENDED_gc;
    ADCA.CH0.MUXCTRL = ADC_CH_MUXPOS_PIN0_gc;
    for (;;) { // finding: superloop-without-sleep main() proven warning
        ADCA.CH0.CTRL |= ADC_CH_START_bm;
        while (!(ADCA.CH0.INTFLAGS & ADC_CH_IF_bm)) // finding: polling-wait proven warning
            ;
        ADCA.CH0.INTFLAGS = ADC_CH_IF_bm;
        level = ADCA.CH0.RES;
        _delay_ms(20); // finding: busy-wait-delay main() proven warning {{20 ms}}
    }
}
