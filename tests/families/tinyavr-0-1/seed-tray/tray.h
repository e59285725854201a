#ifndef TRAY_H
#define TRAY_H

#include <avr/io.h>

#define HEATER_bm PIN3_bm
#define THERMOSTAT_bm PIN1_bm

void tray_init(void);
void tray_look(void);

#endif
