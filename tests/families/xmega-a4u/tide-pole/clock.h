#ifndef CLOCK_H
#define CLOCK_H

void clock_init(void);

#endif
