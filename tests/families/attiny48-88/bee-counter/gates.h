#ifndef GATES_H
#define GATES_H

#include <stdint.h>

void gates_init(void);
void gates_sample(void);

extern volatile uint16_t gone_in;
extern volatile uint16_t gone_out;

#endif
