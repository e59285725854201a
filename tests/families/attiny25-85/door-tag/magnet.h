#ifndef MAGNET_H
#define MAGNET_H

#include <stdint.h>

void magnet_init(void);
uint8_t magnet_moved(void);

#endif
