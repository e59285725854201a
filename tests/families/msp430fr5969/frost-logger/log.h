#ifndef LOG_H
#define LOG_H

#include <stdint.h>

void log_init(void);
void log_append(uint16_t sample);

#endif
