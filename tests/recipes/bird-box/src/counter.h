#include <stdint.h>

void counter_start(void);
uint16_t counter_read(void);
