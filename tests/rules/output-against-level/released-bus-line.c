// device: atxmega32a4u
// board: PC0: { pull: up, ohms: 4700 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        PORTC.DIRSET = PIN0_bm;
        PORTC.DIRCLR = PIN0_bm; // clean: output-against-level PC0
        sleep_mode();
    }
}
