// device: atxmega32e5
// board: PA2: { pull: down, ohms: 100000 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTA.OUT = 0xff;
    PORTA.DIR = 0xff; // finding: output-against-level PA2 proven warning
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
