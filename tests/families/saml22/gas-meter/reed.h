#ifndef REED_H
#define REED_H
#include <stdint.h>

void reed_init(void);
uint32_t reed_turns(void);
#endif
