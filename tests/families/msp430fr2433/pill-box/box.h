#ifndef BOX_H
#define BOX_H

#include <msp430fr2433.h>

/* P2.3 sees the lid's contact against ground, P1.1 drives the lamp. */
#define LID BIT3
#define LAMP BIT1

void box_init(void);
void box_blink(void);

#endif
