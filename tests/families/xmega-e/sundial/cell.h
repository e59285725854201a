#ifndef CELL_H
#define CELL_H

#include <stdint.h>

uint16_t cell_read(void);

#endif
