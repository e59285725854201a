#ifndef TUBE_H
#define TUBE_H

#include <stdint.h>

void tube_init(void);

/* Bicycles since the last call: two axles each. */
uint16_t tube_take(void);

#endif
