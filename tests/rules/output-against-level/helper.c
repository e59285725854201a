// device: atmega328p
// board: PD7: { pull: up, ohms: 10000 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static void drive_low(volatile uint8_t *port, volatile uint8_t *direction, uint8_t bit)
{
    *port &= (uint8_t)~_BV(bit);
    *direction |= _BV(bit); // finding: output-against-level PD7 proven warning
}

int main(void)
{
    drive_low(&PORTD, &DDRD, 7); // related: output-against-level {{drive_low()}}
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
