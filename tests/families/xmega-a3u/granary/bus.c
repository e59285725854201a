#include "bus.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define SENSOR_READ (0x48 << 1 | 1)
#define BAUD_100_KILOHERTZ 5

static volatile uint8_t value;
static volatile uint8_t is_done;

/* The address was answered, and the byte has come. */
ISR(TWIC_TWIM_vect)
{
    value = TWIC.MASTER.DATA;
    TWIC.MASTER.CTRLC = TWI_MASTER_ACKACT_bm | TWI_MASTER_CMD_STOP_gc;
    is_done = 1;
}

uint8_t bus_read_sensor(void)
{
    PR.PRPC &= (uint8_t)~PR_TWI_bm;
    TWIC.MASTER.BAUD = BAUD_100_KILOHERTZ;
    TWIC.MASTER.CTRLA = TWI_MASTER_INTLVL_LO_gc | TWI_MASTER_RIEN_bm | TWI_MASTER_ENABLE_bm;
    TWIC.MASTER.STATUS = TWI_MASTER_BUSSTATE_IDLE_gc;
    is_done = 0;
    TWIC.MASTER.ADDR = SENSOR_READ;

    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    cli();
    while (!is_done) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    TWIC.MASTER.CTRLA = 0;
    PR.PRPC |= PR_TWI_bm;
    return value;
}
