#ifndef RADIO_H
#define RADIO_H

#include <stdint.h>

void radio_send(uint16_t value);

#endif
