#ifndef SENDER_H
#define SENDER_H

#include <stdint.h>

void sender_send(uint16_t value);

#endif
