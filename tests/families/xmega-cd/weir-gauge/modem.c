#include "weir.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static const uint8_t *volatile next;
static volatile uint8_t left;
static volatile uint8_t is_sent;

ISR(USARTE0_DRE_vect)
{
    USARTE0.DATA = *next++;
    if (--left == 0)
        USARTE0.CTRLA = USART_TXCINTLVL_LO_gc;
}

ISR(USARTE0_TXC_vect)
{
    is_sent = 1;
}

void modem_write(const uint8_t *text, uint8_t count)
{
    PR.PRPE = PR_TWI_bm | PR_SPI_bm | PR_TC0_bm;
    USARTE0.BAUDCTRLA = 12;
    next = text;
    left = count;
    is_sent = 0;
    USARTE0.CTRLB = USART_TXEN_bm;
    USARTE0.CTRLA = USART_TXCINTLVL_LO_gc | USART_DREINTLVL_LO_gc;
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
    USARTE0.CTRLA = 0;
    USARTE0.CTRLB = 0;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_TC0_bm;
}
