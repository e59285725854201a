#ifndef LISTENER_H
#define LISTENER_H

#include <stdint.h>

void listener_init(void);
uint16_t listener_count(void);

#endif
