// For 32-bit Arm, in place of ../functions/result.h, whose guard it takes: each R(expression) stores 32 bits of its value. Under
// Linux END() prints them; in the analysis they go to plain memory at RESULTS, and END() sleeps.
#ifndef RESULT_H
#define RESULT_H
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#define PROGMEM
#define PSTR(text) (text)
#define pgm_read_byte(address) (*(const uint8_t *)(address))
#define pgm_read_word(address) (*(const uint16_t *)(address))
#define pgm_read_dword(address) (*(const uint32_t *)(address))
#define memcpy_P memcpy
#define strlen_P strlen

#define F static __attribute__((noinline))
#ifdef __linux__
int printf(const char *format, ...);
static volatile uint32_t results[64];
#define R(expression) (void)(results[__COUNTER__] = (uint32_t)(expression))
#define END()                                                 \
    do {                                                      \
        for (int i_ = 0; i_ < __COUNTER__; i_++)              \
            printf("%08lx\n", (unsigned long)results[i_]);    \
        return 0;                                             \
    } while (0)
#else
#define RESULTS 0x20000000
#define R(expression) (void)(((volatile uint32_t *)RESULTS)[__COUNTER__] = (uint32_t)(expression))
#define END()                            \
    do {                                 \
        for (;;)                         \
            __asm__ volatile("wfi");     \
    } while (0)
#endif

#endif
