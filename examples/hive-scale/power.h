/* Going to sleep, and the watchdog timer that ends it every eight seconds. */
#ifndef POWER_H
#define POWER_H

#include <stdint.h>

extern volatile uint8_t report_due;

void wake_timer_start(void);

/* Sleeps deeply until the wake timer or the button. */
void rest(void);

/* Stops the CPU alone, so that the serial port goes on. */
void doze(void);

#endif
