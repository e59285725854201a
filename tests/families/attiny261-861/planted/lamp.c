#include "lamp.h"

#include <avr/io.h>
#include <util/delay.h>

void lamp_init(void)
{
    TC1H = 0;
    OCR1C = 255;
    OCR1A = 20;
    TCCR1A = _BV(COM1A1) | _BV(PWM1A);
    TCCR1B = _BV(CS11);
    WDTCR = _BV(WDP3); // finding: locked-write WDTCR proven
}

void lamp_next(void)
{
    OCR1A = (uint8_t)(OCR1A + 40);
    _delay_ms(150); // finding: busy-wait-delay lamp_next() proven
}
