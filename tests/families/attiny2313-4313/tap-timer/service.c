#include "service.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "wake.h"

#define OUT PD1
#define BAUD 2400UL

static volatile uint8_t is_sent;

ISR(USART_TX_vect)
{
    is_sent = 1;
}

void service_init(void)
{
    PORTD = _BV(OUT) | _BV(KEY) | _BV(SERVICE_PRESENT);
    DDRD = (uint8_t)~(_BV(KEY) | _BV(SERVICE_PRESENT));
}

void service_send(uint8_t value)
{
    power_usart_enable();
    UBRRL = F_CPU / (16 * BAUD) - 1;
    UCSRB = _BV(TXCIE) | _BV(TXEN);
    is_sent = 0;
    UDR = value;
    set_sleep_mode(SLEEP_MODE_IDLE);
    cli();
    while (!is_sent) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    UCSRB = 0;
    power_usart_disable();
}
