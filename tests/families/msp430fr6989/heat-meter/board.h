#ifndef BOARD_H
#define BOARD_H

#include <msp430fr6989.h>

/* P9.0 and P9.1 excite the wheel's sensors; P1.2 and P9.4 measure the thermometers, which P2.0 feeds. A crystal at PJ.4 and PJ.5. */
#define WHEEL (BIT0 | BIT1)
#define FLOW BIT2
#define RETURN BIT4
#define SUPPLY BIT0
#define CRYSTAL (BIT4 | BIT5)

void board_init(void);
void board_sleep(void);

#endif
