#ifndef CABLE_H
#define CABLE_H

#include <stdint.h>

enum cable_event { CABLE_NOTHING, CABLE_ASKED };

void cable_init(void);

/* Starts to send numbers; what serves the interrupt goes on with them. They must stay where they are. */
void cable_send(const uint16_t *numbers, uint8_t count);

/* Serves the interrupt of the cable's interface. */
enum cable_event cable_serve(void);

#endif
