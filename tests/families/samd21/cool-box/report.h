#ifndef REPORT_H
#define REPORT_H
#include <stdint.h>

void report_init(void);
void report_level(uint16_t level);
#endif
