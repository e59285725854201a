#ifndef PINS_H
#define PINS_H

#include "m328pb.h"

/* PE2 has the light sensor's output, an open collector; PB3 sends. */
#define SENSOR 2
#define SENDS 3

void pins_init(void);

#endif
