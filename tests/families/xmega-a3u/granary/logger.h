#ifndef LOGGER_H
#define LOGGER_H

#include <stdint.h>

void logger_write(uint8_t value);

#endif
