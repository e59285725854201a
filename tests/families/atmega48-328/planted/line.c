#include "line.h"

#include <avr/power.h>
#include <util/delay.h>

#define BAUD 1200UL
#define REPORT 'F'

void line_init(void)
{
    PORTD |= _BV(LINE_IN);
    power_usart0_enable();
    UBRR0 = F_CPU / (16 * BAUD) - 1;
    UCSR0B = _BV(TXEN0); // finding: peripheral-on-in-sleep USART0 proven warning
}

void line_report(void)
{
    while (!(UCSR0A & _BV(UDRE0))) // finding: polling-wait UCSR0A proven warning
        ;
    UDR0 = REPORT;
    _delay_ms(20); // finding: busy-wait-delay line_report() proven warning
}
