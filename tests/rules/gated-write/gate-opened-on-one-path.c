// device: atmega644p
// Where the line is not wanted its gate stays closed, and the write behind the branch is lost. Only sure losses are reported: a gate that
// may be closed is most often opened and used on the same answer.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    power_all_disable();
    if (!(PINB & _BV(PB2))) {
        power_usart1_enable();
    }
    UCSR1B = _BV(RXEN1); // finding-wanted: gated-write UCSR1B possible note
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
