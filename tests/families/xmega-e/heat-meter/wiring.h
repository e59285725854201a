#ifndef WIRING_H
#define WIRING_H

void wiring_init(void);

#endif
