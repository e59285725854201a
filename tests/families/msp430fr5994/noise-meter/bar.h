#ifndef BAR_H
#define BAR_H

#include <stdint.h>

void bar_init(void);
void bar_show(uint16_t count);

#endif
