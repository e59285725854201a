// device: atmega328p
// board: PD2: { connected: no }
// board: PD3: { pull: down, ohms: 10000 }
// board: PD4: { driven: either }
// The board file settles PD3 and PD4, and says that nothing drives PD2 although the program reads it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xe3; // finding: floating-pin PD2 proven warning
    // clean: floating-pin PD3 PD4
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        PORTB = PIND;
        sleep_mode();
    }
}
