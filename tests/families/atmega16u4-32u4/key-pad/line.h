#ifndef LINE_H
#define LINE_H

#include <stdint.h>

void line_init(void);
void line_send(uint8_t byte);

#endif
