#ifndef BOARD_H
#define BOARD_H

/* Port B: the vent's motor. */
#define MOTOR_OPEN PB0
#define MOTOR_CLOSE PB1

/* Port C: the thermistor, and the pin that feeds it. */
#define THERMISTOR PC0
#define THERMISTOR_FEED PC1

/* Port D: the gardener's button, to ground. */
#define BUTTON PD2

void board_init(void);

#endif
