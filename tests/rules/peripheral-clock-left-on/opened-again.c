// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include <avr/power.h>

int main(void)
{
    power_all_disable();
    power_twi_enable(); // finding: peripheral-clock-left-on TWI proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
