// device: atmega2560
// This part has two registers of gates.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

static void save(uint8_t first, uint8_t second)
{
    PRR0 = first;
    PRR1 = second;
}

int main(void)
{
    save(0xEF, 0x3F);
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: peripheral-clock-left-on USART0 USART1 TIMER3 TIMER4 TIMER5
    }
}
