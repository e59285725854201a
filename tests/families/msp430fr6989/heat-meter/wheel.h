#ifndef WHEEL_H
#define WHEEL_H

void wheel_start(void);

#endif
