#ifndef PARKING_H
#define PARKING_H

void parking_init(void);

#endif
