#ifndef SUPPLY_H
#define SUPPLY_H

#include <msp430fr2433.h>

/* P1.5 is the float's divider, P2.2 feeds it. P1.4 sends, and P2.5 has the line's wake-up pulse, low as long as it rests. */
#define FLOAT BIT5
#define FLOAT_SUPPLY BIT2
#define LINE_OUT BIT4
#define LINE_WAKE BIT5

void supply_init(void);

#endif
