#ifndef HORN_H
#define HORN_H

#include <stdint.h>

void horn_init(void);
void horn(uint8_t on);

#endif
