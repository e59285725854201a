#ifndef FLAP_H
#define FLAP_H
void flap_init(void);
int flap_moved(void);
void latch_init(void);
void latch_set(int is_shut);
#endif
