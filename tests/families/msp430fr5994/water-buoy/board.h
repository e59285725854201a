#ifndef BOARD_H
#define BOARD_H

#include <msp430fr5994.h>

/* P7.5 is the thermometer's divider, P8.0 feeds it; P5.4 sends to the radio, P8.1 feeds that. A crystal at PJ.4 and PJ.5. */
#define DIVIDER BIT5
#define RADIO_OUT BIT4
#define DIVIDER_SUPPLY BIT0
#define RADIO_SUPPLY BIT1
#define CRYSTAL (BIT4 | BIT5)

void board_init(void);
void board_off_for_an_hour(void);

#endif
