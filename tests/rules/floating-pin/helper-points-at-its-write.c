// device: atmega328p
// The write stands in a helper: the finding points there and names the call.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void release(volatile uint8_t *direction, volatile uint8_t *port, uint8_t mask)
{
    *direction &= (uint8_t)~mask;
    *port &= (uint8_t)~mask; // finding: floating-pin PB4 PB5 proven warning
}

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xff;
    release(&DDRB, &PORTB, 0x30); // related: floating-pin {{release()}}
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
