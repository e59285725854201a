/* The radio modem: a serial line that carries reports away and brings commands back. */
#ifndef RADIO_H
#define RADIO_H

#include <stdint.h>

struct report
{
    int32_t weight;
    uint16_t brood_nest;
    uint16_t battery;
};

void radio_init(void);
void radio_send(const struct report *report);

/* The last command received, or 0. */
uint8_t radio_command(void);

#endif
