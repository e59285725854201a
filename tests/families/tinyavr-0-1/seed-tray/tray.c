#include "tray.h"

/* A table of what each pin is: most are outputs without a wire. */
static const struct {
    PORT_t *port;
    uint8_t outputs;
    uint8_t pulled;
} wiring[] = {
    { &PORTA, (uint8_t)~(PIN0_bm | THERMOSTAT_bm), THERMOSTAT_bm },
    { &PORTB, 0x0F, 0 },
};

void tray_init(void)
{
    for (uint8_t i = 0; i < sizeof wiring / sizeof wiring[0]; i++) {
        PORT_t *port = wiring[i].port;

        port->OUT = 0;
        port->DIR = wiring[i].outputs;
        for (uint8_t pin = 0; pin < 8; pin++) {
            if (wiring[i].pulled & (1 << pin)) {
                (&port->PIN0CTRL)[pin] = PORT_PULLUPEN_bm;
            }
        }
    }
}

void tray_look(void)
{
    if (VPORTA.IN & THERMOSTAT_bm) {
        VPORTA.OUT |= HEATER_bm;
    } else {
        VPORTA.OUT &= (uint8_t)~HEATER_bm;
    }
}
