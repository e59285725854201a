// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA -Wall
// A gauge in a wet cellar: every thirty seconds it supplies a pressure sensor, reads it over two wires, and sends a line when the level moved.
#include "board.h"

static uint16_t last_level;

static void report(uint16_t level)
{
    static uint8_t text[3];

    text[0] = (uint8_t)('0' + level / 10 % 10);
    text[1] = (uint8_t)('0' + level % 10);
    text[2] = '\n';
    line_write(text, sizeof text);
}

int main(void)
{
    static uint8_t bytes[2];

    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
    pins_prepare();
    clock_prepare(30);
    for (;;) {
        while (!clock_take())
            __WFE();
        NRF_P0->OUTSET = 1u << PIN_SENSOR_POWER;
        if (sensor_read(bytes, sizeof bytes)) {
            uint16_t level = (uint16_t)(bytes[0] << 8 | bytes[1]);
            if (level != last_level) {
                last_level = level;
                report(level);
            }
        }
        NRF_P0->OUTCLR = 1u << PIN_SENSOR_POWER;
    }
}
