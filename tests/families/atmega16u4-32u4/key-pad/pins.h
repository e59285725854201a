#ifndef PINS_H
#define PINS_H

void pins_init(void);

#endif
