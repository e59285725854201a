#ifndef BOARD_H
#define BOARD_H
#define BUTTON 9u /* PA09 to ground, on EXTINT9 */
#define OPENER 16u /* PA16 drives the wax motor's switch */
#define LAMP 8u /* PB08 */

void board_park(void);
void opener_set(int is_open);
#endif
