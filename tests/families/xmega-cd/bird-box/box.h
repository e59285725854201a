#ifndef BOX_H
#define BOX_H
#include <stdint.h>

enum { PERCH = 2 /* PD2: a light barrier to ground */, LAMP = 0 /* PC0 */ };

void pins_prepare(void);
/* Both with interrupts off; the second lets them in as the CPU stops. */
uint16_t visits_now(void);
void lamp_flash(uint8_t times);
void sleep_deep(void);
#endif
