// device: atxmega32a4u
// board: PC0: { pull: up, ohms: 4700 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTC.DIRSET = PIN0_bm; // finding: output-against-level PC0 proven warning {{pulls it up with 4700 Ω}}
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
