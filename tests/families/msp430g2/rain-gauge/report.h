#ifndef REPORT_H
#define REPORT_H

#include <stdint.h>

void report_init(void);

/* Starts to send a number; the handler goes on with it. */
void report_send(uint16_t number);

#endif
