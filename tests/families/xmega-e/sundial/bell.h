#ifndef BELL_H
#define BELL_H

void bell_ring(void);

#endif
