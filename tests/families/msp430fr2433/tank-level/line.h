#ifndef LINE_H
#define LINE_H

#include <stdint.h>

void line_init(void);

/* Returns when somebody asks. */
void line_wait(void);
void line_answer(uint16_t value);

#endif
