#ifndef PROBE_H
#define PROBE_H
#include "nrf.h"

enum { DIVIDER_SUPPLY = 2 /* P1.02 */, TAMPER = 4 /* P1.04 */ };

typedef struct {
    uint8_t moisture;
    uint8_t battery;
    int8_t celsius;
    uint8_t is_opened;
} reading;

void pins_prepare(void);
uint8_t pins_were_opened(void);
void ticker_prepare(void);
int ticker_take(void);
void converter_read(reading *to);
void radio_prepare(void);
void radio_send(const reading *what);
#endif
