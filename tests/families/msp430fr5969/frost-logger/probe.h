#ifndef PROBE_H
#define PROBE_H

#include <stdint.h>

void probe_init(void);
uint16_t probe_read(void);

#endif
