// device: atmega328p
// flags: -DF_CPU=8000000UL
// Jumps, commas, conditional lvalues and a statement expression.
#include <avr/io.h>
#include <avr/sleep.h>

#define MAXIMUM(a, b) ({ __typeof__(a) a_ = (a); __typeof__(b) b_ = (b); a_ > b_ ? a_ : b_; })

int main(void)
{
    uint8_t i = 0, j;
again:
    DDRB |= 1 << i;
    i += 2;
    if (i < 6)
        goto again;
    for (i = 0, j = 7; i < j; i++, j--)
        PORTD |= 1 << i, PORTD &= ~(1 << j);
    *(i > 5 ? &PORTC : &PORTB) |= (j++, 0x01) | 0x10;
    PORTC = j - i;
    DDRD = MAXIMUM(0x12, 0x0F);
    {
        uint8_t tries = 0;
        while (1) {
            if (tries++ > 3)
                goto done;
            continue;
        }
    done:
        DDRC = tries;
    }
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0x15, PORTD = 0x0f, PORTB = 0x11, PORTC = 0, DDRD = 0x12, DDRC = 5
}
