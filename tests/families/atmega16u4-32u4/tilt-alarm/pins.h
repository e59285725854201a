#ifndef PINS_H
#define PINS_H

#include <avr/io.h>

/* The switch pulls PD0 low when it tilts; PC6 has the horn's driver. */
#define TILT PD0
#define HORN PC6

void pins_init(void);

#endif
