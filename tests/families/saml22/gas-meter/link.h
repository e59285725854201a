#ifndef LINK_H
#define LINK_H
#include <stdint.h>

void link_init(void);
void link_send(uint8_t count);
#endif
