#ifndef READER_H
#define READER_H

#include <stdint.h>

void reader_init(void);
void reader_send(const uint16_t *values, uint8_t count);

#endif
