#ifndef BUCKET_H
#define BUCKET_H

#include <stdint.h>

void bucket_init(void);
uint16_t bucket_count(void);

#endif
