#ifndef SERVICE_H
#define SERVICE_H

#include <stdint.h>

void service_init(void);
void service_send(uint8_t value);

#endif
