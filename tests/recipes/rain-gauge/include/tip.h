#include <stdint.h>

extern volatile uint8_t tips;
void tip_start(void);
