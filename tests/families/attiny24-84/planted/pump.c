#include "pump.h"

#include <avr/io.h>
#include <util/delay.h>

#define PUMP PB1

volatile uint8_t pump_due;

void pump_run(void)
{
    if (!pump_due)
        return;
    pump_due = 0;
    PORTB |= _BV(PUMP);
    _delay_ms(4000); // finding: busy-wait-delay pump_run() proven
    PORTB &= (uint8_t)~_BV(PUMP);
}
