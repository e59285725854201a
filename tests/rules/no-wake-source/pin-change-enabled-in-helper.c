// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT1_vect)

static void arm(uint8_t group, uint8_t mask)
{
    (&PCMSK0)[group] = mask;
    PCICR |= (uint8_t)(1 << group);
}

int main(void)
{
    arm(1, 0x04);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
