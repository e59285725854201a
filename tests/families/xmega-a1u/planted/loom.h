#ifndef LOOM_H
#define LOOM_H

#include <stdint.h>

void loom_init(void);
void loom_show(uint16_t shots);

#endif
