#ifndef POWER_H
#define POWER_H

void power_init(void);
#endif
