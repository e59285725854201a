/*
 * What is wired where.
 *
 *   PB1  status lamp, high: lit
 *   PB2  bridge supply switch, high: strain gauges and their converter powered
 *   PC0  brood-nest thermistor (analog)
 *   PC1  battery divider (analog)
 *   PD0  from the radio modem        PD1  to the radio modem
 *   PD2  service button, closes to ground
 *   PD3  bridge converter clock      PD4  bridge converter data
 *   the others are not connected
 */
#ifndef BOARD_H
#define BOARD_H

#include "chip.h"

#define LAMP (1 << 1)
#define BRIDGE_SUPPLY (1 << 2)
#define MODEM_IN (1 << 0)
#define MODEM_OUT (1 << 1)
#define BUTTON (1 << 2)
#define BRIDGE_CLOCK (1 << 3)
#define BRIDGE_DATA (1 << 4)

void board_init(void);
void lamp(uint8_t lit);

/* Bridge data as an input while the converter has power, and driven low while it has none. */
void bridge_listen(void);
void bridge_release(void);

#endif
