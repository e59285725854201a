#ifndef PORT_H
#define PORT_H

#include <stdint.h>

void port_init(void);
uint8_t port_is_read(void);
void port_send(uint16_t value);

#endif
