#include "reader.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <util/twi.h>

#include "gates.h"

#define ADDRESS 0x2A
#define LISTENING (_BV(TWEA) | _BV(TWEN) | _BV(TWIE))

static uint8_t sums[4];
static uint8_t next;

ISR(TWI_vect)
{
    switch (TW_STATUS) {
    case TW_ST_SLA_ACK:
        sums[0] = (uint8_t)gone_in;
        sums[1] = (uint8_t)(gone_in >> 8);
        sums[2] = (uint8_t)gone_out;
        sums[3] = (uint8_t)(gone_out >> 8);
        next = 0;
        /* fall through */
    case TW_ST_DATA_ACK:
        TWDR = sums[next++ & 3];
        break;
    default:
        break;
    }
    TWCR = LISTENING | _BV(TWINT);
}

void reader_init(void)
{
    power_twi_enable();
    TWAR = ADDRESS << 1;
    TWCR = LISTENING;
}
