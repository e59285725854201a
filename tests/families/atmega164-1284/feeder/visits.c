#include "visits.h"

static uint16_t visits[VISITS_KEPT];
static uint8_t next;

void visits_add(uint16_t weight)
{
    visits[next] = weight;
    next = (uint8_t)((next + 1) % VISITS_KEPT);
}

const uint16_t *visits_recorded(void)
{
    return visits;
}
