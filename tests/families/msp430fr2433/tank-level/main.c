// device: msp430fr2433
// flags: -Wall
// Measures the level of an oil tank when it is asked on a serial line, and rests in between with no clock at all.
#include <stdint.h>

#include "line.h"
#include "sensor.h"
#include "supply.h"

int main(void)
{
    supply_init();
    sensor_init();
    line_init();

    for (;;) {
        line_wait();
        line_answer(sensor_read());
    }
}
