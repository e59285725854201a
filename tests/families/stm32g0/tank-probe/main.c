// device: stm32g071xx
// flags: -DSTM32G071xx -Wall
// A tank's level probe on a serial bus: it listens in stop, and answers a question with the level that a gauge gives.
#include "probe.h"
#include "stm32g0xx.h"

int main(void)
{
    power_prepare();
    pins_prepare();
    bus_start();
    for (;;) {
        __disable_irq();
        if (!bus_asks()) {
            power_rest();
            __enable_irq();
            continue;
        }
        __enable_irq();
        bus_answer(level_read());
    }
}
