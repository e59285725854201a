#ifndef PINS_H
#define PINS_H

#define PRESSURE_PIN 2 /* of port A */
#define SUPPLY_PIN 5   /* of port C: the sensor's supply */

void pins_init(void);

#endif
