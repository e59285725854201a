#ifndef GAUGE_H
#define GAUGE_H

#include <stdint.h>

uint16_t gauge_read(void);

#endif
