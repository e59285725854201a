#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "counter.h"

int main(void)
{
    DDRB = 0xFF;
    PORTC = 0x7F;
    PORTD = 0xFF;
    PRR = 0xEF;
    counter_start();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        GPIOR0 = (uint8_t)counter_read();
    }
}
