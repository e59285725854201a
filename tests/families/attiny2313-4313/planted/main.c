// device: attiny2313a
// flags: -DF_CPU=1000000UL -Wall
// A parking disc that moves its hand by itself, with a serial line for the garage.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "hand.h"

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    hand_init();
    ACSR = _BV(ACD);
    power_all_disable();
    power_usart_enable();
    UCSRB = _BV(RXEN); // finding: peripheral-on-in-sleep USART proven
    power_usi_enable(); // finding: peripheral-clock-left-on USI proven
    GIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: shallow-sleep proven {{power-down}}
    sei();

    for (;;) {
        sleep_mode();
        hand_step();
    }
}
