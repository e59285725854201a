// device: atmega328p
// flags: -DF_CPU=8000000UL
// The sleep instruction without its enable bit is passed over.
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0x01;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_cpu(); // state: SMCR = 0x04, DDRB = 0x01
    DDRB = 0x03;
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: SMCR = 0x05, DDRB = 0x03
}
