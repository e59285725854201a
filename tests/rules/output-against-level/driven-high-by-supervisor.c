// device: atmega1284p
// board: PC3: { driven: high }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRC |= _BV(DDC3); // finding: output-against-level PC3 proven error {{drives it high}}
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
