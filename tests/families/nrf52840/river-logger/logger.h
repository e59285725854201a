#ifndef LOGGER_H
#define LOGGER_H
#include "nrf.h"

enum { FLOAT_SWITCH = 24, LINE_TXD = 6, LINE_ASK = 8 /* P1.08 */ };
enum { RECORDS_A_PAGE = 64 };

typedef struct {
    uint32_t minute;
    uint32_t tips;
} record;

void supply_prepare(void);
void guard_prepare(void);
void guard_feed(void);
void pins_prepare(void);
uint32_t pins_tips(void);
int pins_is_asked(void);
void clock_prepare(void);
uint32_t clock_minutes(void);
void store_write(const record *page, uint32_t address);
void line_write(const record *page, uint32_t count);
#endif
