#ifndef GAUGE_H
#define GAUGE_H

#include <stdint.h>

#define GAUGE_HEIGHTS 240

void gauge_init(void);

uint16_t gauge_measure(void);

void gauge_store(uint16_t height);

/* The heights of the last day, oldest first after the one that was stored last. */
const uint16_t *gauge_heights(void);

#endif
