#ifndef TEMPERATURES_H
#define TEMPERATURES_H

#include <stdint.h>

/* In steps of the converter; more is warmer. */
struct temperatures {
    uint16_t radiator;
    uint16_t room;
};

void temperatures_init(void);

void temperatures_measure(struct temperatures *now);

#endif
