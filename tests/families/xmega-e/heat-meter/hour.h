#ifndef HOUR_H
#define HOUR_H

void hour_init(void);

#endif
