#ifndef BUCKET_H
#define BUCKET_H

#include <stdint.h>

void bucket_init(void);

/* The tips since the last call. */
uint16_t bucket_take(void);

#endif
