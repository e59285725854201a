// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char head, tail, buffer[8];

ISR(INT0_vect) { buffer[head++ & 7] = PIND; }

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (head == tail)
            sleep_mode(); // finding: check-then-sleep-race head proven
        while (tail != head)
            PORTB = buffer[tail++ & 7];
    }
}
