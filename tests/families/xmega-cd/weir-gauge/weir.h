#ifndef WEIR_H
#define WEIR_H
#include <stdint.h>

enum { LEVEL_PIN = 4 /* of port A */, SUPPLY_PIN = 1 /* of port D */, CALL_PIN = 3 /* of port F, wired or not */ };

void pins_prepare(void);
uint8_t pins_take_call(void);
void clock_prepare(uint16_t seconds);
uint16_t level_read(void);
void modem_write(const uint8_t *text, uint8_t count);
#endif
