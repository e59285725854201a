// device: atmega328p
// flags: -DF_CPU=8000000UL -std=gnu99
// Atomic blocks of both kinds around shared data.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/atomic.h>

static volatile uint16_t level;

ISR(PCINT1_vect)
{
    level += 3;
}

int main(void)
{
    uint16_t copy = 0;
    ATOMIC_BLOCK(ATOMIC_FORCEON)
    {
        DDRB = 0x1C;
        PCICR = _BV(PCIE1);
        PCMSK1 = _BV(PCINT9);
        PORTC = _BV(PORTC1);
    }
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        ATOMIC_BLOCK(ATOMIC_RESTORESTATE)
        {
            copy = level;
            PORTB = 0x1C;
        }
        NONATOMIC_BLOCK(NONATOMIC_RESTORESTATE)
        {
            OCR1A = copy;
        }
        sleep_mode(); // state: DDRB = 0x1c, PORTB = 0x1c, PCMSK1 = 0x02
    }
}
