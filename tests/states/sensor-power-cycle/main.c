// device: atmega328p
// flags: -DF_CPU=8000000UL
// A soil sensor powered from a pin only while it is read; the node sleeps between.
#include "node.h"

int main(void)
{
    node_start();
    for (;;) {
        uint16_t moisture = sensor_read();
        if (moisture > 600)
            node_alarm();
        node_rest(8);
    }
}
