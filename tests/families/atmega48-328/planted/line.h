#ifndef LINE_H
#define LINE_H

#include <avr/io.h>

#define LINE_OUT PD1
#define LINE_IN PD0

void line_init(void);
void line_report(void);

#endif
