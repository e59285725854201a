#ifndef FLOAT_SWITCH_H
#define FLOAT_SWITCH_H

void float_switch_init(void);
int float_switch_has_moved(void);
int float_switch_take(void);
#endif
