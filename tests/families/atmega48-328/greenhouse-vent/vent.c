#include "vent.h"

#include <avr/io.h>

#include "board.h"

#define BOTH (_BV(MOTOR_OPEN) | _BV(MOTOR_CLOSE))

void vent_drive(enum vent_drive drive)
{
    static const uint8_t level[] = {
        [VENT_STILL] = 0,
        [VENT_OPENING] = _BV(MOTOR_OPEN),
        [VENT_CLOSING] = _BV(MOTOR_CLOSE),
    };

    /* Never both at once, not even between two instructions. */
    PORTB &= (uint8_t)~BOTH;
    PORTB |= level[drive];
}
