#include "logger.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define FEED PIN6_bm /* of port F */

static volatile uint8_t is_sent;

ISR(USARTF0_TXC_vect)
{
    is_sent = 1;
}

void logger_write(uint8_t value)
{
    PORTF.OUTSET = FEED;
    PR.PRPF &= (uint8_t)~PR_USART0_bm;
    USARTF0.BAUDCTRLA = 12;
    USARTF0.CTRLA = USART_TXCINTLVL_LO_gc;
    USARTF0.CTRLB = USART_TXEN_bm;
    is_sent = 0;
    USARTF0.DATA = value;

    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    cli();
    while (!is_sent) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    USARTF0.CTRLB = 0;
    USARTF0.CTRLA = 0;
    PR.PRPF |= PR_USART0_bm;
    PORTF.OUTCLR = FEED;
}
