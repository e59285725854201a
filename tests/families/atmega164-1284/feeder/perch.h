#ifndef PERCH_H
#define PERCH_H

#include <stdint.h>

enum perch_event {
    PERCH_TAKEN,
    READER_CAME,
};

void perch_init(void);

/* Sleeps until a bird lands or the reader is plugged in. */
enum perch_event perch_wait(void);

uint16_t perch_weight(void);

#endif
