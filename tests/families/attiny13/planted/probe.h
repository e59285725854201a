#ifndef PROBE_H
#define PROBE_H

#include <avr/io.h>

void probe_init(void);
uint16_t probe_read(void);

#endif
