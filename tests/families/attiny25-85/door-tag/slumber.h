#ifndef SLUMBER_H
#define SLUMBER_H

#include <stdint.h>

void slumber_init(void);

/* Sleeps until it is over, as the function says. */
void slumber(uint8_t (*is_over)(void));

#endif
