#ifndef BEEPER_H
#define BEEPER_H

#include <avr/io.h>

#define BEEPER PB1

void beep(void);

#endif
