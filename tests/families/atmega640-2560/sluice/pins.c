#include "pins.h"

#include <avr/io.h>
#include <avr/power.h>

#define PARK(port, inputs)          \
    do {                            \
        PORT##port = 0;             \
        DDR##port = (uint8_t)~(inputs); \
    } while (0)

void pins_init(void)
{
    PARK(A, 0);
    PARK(B, 0);
    PARK(C, 0);
    PARK(D, 0);
    PARK(E, 0);
    PARK(F, 0);
    PARK(G, 0);
    PARK(H, 0);
    PARK(J, 0);
    PARK(K, 0);
    PARK(L, 0);
    ACSR = _BV(ACD);
    power_all_disable();
}
