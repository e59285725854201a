#ifndef ACID_H
#define ACID_H

#define PROBE (BIT2 | BIT3)

void acid_init(void);
int acid_is_right(void);

#endif
