#ifndef LOOK_H
#define LOOK_H

#include <stdint.h>

void look_init(void);
void look_wait(void);
uint8_t look_is_wet(void);

#endif
