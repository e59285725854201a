#ifndef SLOT_H
#define SLOT_H
#include "m328pb.h"

enum { FLAP = 0 /* PE0 */, LINE = 3 /* PB3: transmits */ };

void pins_prepare(void);
uint8_t flap_events(void);
void line_send(uint8_t byte);
#endif
