#ifndef VISITS_H
#define VISITS_H

#include <stdint.h>

#define VISITS_KEPT 64

void visits_add(uint16_t weight);
const uint16_t *visits_recorded(void);

#endif
