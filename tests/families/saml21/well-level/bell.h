#ifndef BELL_H
#define BELL_H

void bell_init(void);
void bell_ring(void);
int bell_is_due(void);
void bell_tick(void);
#endif
