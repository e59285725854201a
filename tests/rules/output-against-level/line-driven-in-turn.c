// device: atmega1284p
// board: PC3: { driven: either }
// The other side lets go of the line when it has no supply; the program holds it low meanwhile.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRC |= _BV(DDC3);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
