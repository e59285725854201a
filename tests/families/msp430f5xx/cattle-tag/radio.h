#ifndef RADIO_H
#define RADIO_H

#include <stdint.h>

void radio_init(void);

/* Sends and lets the radio sleep again. */
void radio_send(uint16_t number, uint8_t value);

#endif
