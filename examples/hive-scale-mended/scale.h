/* The strain-gauge bridge under the hive. */
#ifndef SCALE_H
#define SCALE_H

#include <stdint.h>

/* The hive's weight in converter counts. */
int32_t scale_weigh(void);

#endif
