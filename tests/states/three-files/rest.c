#include "board.h"
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

uint8_t board_rests;

ISR(WDT_vect)
{
    board_rests++;
}

void board_rest(enum board_depth depth)
{
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP2) | _BV(WDP1);
    set_sleep_mode(depth == BOARD_DEEP ? SLEEP_MODE_PWR_DOWN : SLEEP_MODE_IDLE);
    sei();
    sleep_enable();
    sleep_cpu(); // state: SMCR = 0b0000_0101, DDRB = 0b0010_1010, PORTB = 0b0001_0101, CLKPR = 2
    sleep_disable();
}
