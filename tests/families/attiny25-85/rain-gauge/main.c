// device: attiny85
// flags: -DF_CPU=1000000UL -Wall
// A tipping bucket counts rain; a reader clocks the count out over two wires.
#include "bucket.h"
#include "port.h"
#include "rest.h"

int main(void)
{
    port_init();
    bucket_init();
    rest_init();

    for (;;) {
        rest();
        if (port_is_read())
            port_send(bucket_count());
    }
}
