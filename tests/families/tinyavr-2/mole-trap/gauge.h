#ifndef GAUGE_H
#define GAUGE_H

#include <stdint.h>

void gauge_init(void);
uint16_t gauge_read(void);

#endif
