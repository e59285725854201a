// device: avr64ea48
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(PORTD_PORT_vect) { PORTD.INTFLAGS = PIN5_bm; }

static void rest(uint8_t mode)
{
    SLPCTRL.CTRLA = (uint8_t)(mode | SLPCTRL_SEN_bm);
    sleep_cpu();
    SLPCTRL.CTRLA = 0;
}

int main(void)
{
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    sei();
    for (;;) {
        rest(SLEEP_MODE_PWR_DOWN); // clean: sleep-disabled SLEEP
    }
}
