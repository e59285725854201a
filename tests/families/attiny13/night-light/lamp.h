#ifndef LAMP_H
#define LAMP_H

#include <stdint.h>

void lamp_init(void);
void lamp_switch(uint8_t lit);

#endif
