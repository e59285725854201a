#ifndef BOARD_H
#define BOARD_H
#define HEATER 12u /* PB12 */

void board_park(void);
void board_power(void);
void board_idle(void);
void board_stand_by(void);
void heater_set(int is_on);
#endif
