// device: atmega328p
// board: PC1: { pull: down, ohms: 4700 }
// board: PC2: { driven: low }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void pull_up(volatile uint8_t *port, uint8_t mask)
{
    *port |= mask; // finding: pull-against-level PC1 PC2 proven
}

int main(void)
{
    pull_up(&PORTC, 0x06);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
