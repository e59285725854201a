// Each R(expression) stores 32 bits of its value at the next place of a block of plain memory.
#ifndef RESULT_H
#define RESULT_H
#include <avr/io.h>
#include <avr/pgmspace.h>
#include <avr/sleep.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#define RESULTS 0x500
#define F static __attribute__((noinline))
#define R(expression)                                                          \
    do {                                                                       \
        uint32_t value_ = (uint32_t)(expression);                              \
        volatile uint8_t *at_ = (volatile uint8_t *)(RESULTS + 4 * __COUNTER__); \
        at_[0] = (uint8_t)value_;                                              \
        at_[1] = (uint8_t)(value_ >> 8);                                       \
        at_[2] = (uint8_t)(value_ >> 16);                                      \
        at_[3] = (uint8_t)(value_ >> 24);                                      \
    } while (0)
#define END()          \
    do {               \
        for (;;)       \
            sleep_cpu(); \
    } while (0)

#endif
