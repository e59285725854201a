// device: attiny406
// flags: -DF_CPU=3333333UL -Wall
// Runs a pond's skimmer at a third of its speed while the reed switch says that the lid is shut.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define LID_bm PIN2_bm
#define MOTOR_bm PIN0_bm

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = LID_bm;
}

static void motor_start(void)
{
    PORTB.DIRSET = MOTOR_bm;
    TCA0.SINGLE.PER = 299;
    TCA0.SINGLE.CMP0 = 100;
    TCA0.SINGLE.CTRLB = TCA_SINGLE_CMP0EN_bm | TCA_SINGLE_WGMODE_SINGLESLOPE_gc;
    TCA0.SINGLE.CTRLA = TCA_SINGLE_CLKSEL_DIV64_gc | TCA_SINGLE_ENABLE_bm;
}

static void motor_stop(void)
{
    TCA0.SINGLE.CTRLA = 0;
    TCA0.SINGLE.CTRLB = 0;
    PORTB.OUTCLR = MOTOR_bm;
}

int main(void)
{
    for (uint8_t pin = 0; pin < 8; pin++) {
        (&PORTA.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
        (&PORTB.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
        (&PORTC.PIN0CTRL)[pin] = PORT_ISC_INPUT_DISABLE_gc;
    }
    PORTA.PIN2CTRL = PORT_PULLUPEN_bm | PORT_ISC_BOTHEDGES_gc;

    for (;;) {
        cli();
        if (PORTA.IN & LID_bm) {
            motor_stop();
            set_sleep_mode(SLEEP_MODE_PWR_DOWN);
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
        } else {
            /* The waveform stands still in any deeper mode. */
            motor_start();
            set_sleep_mode(SLEEP_MODE_IDLE);
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
        }
    }
}
