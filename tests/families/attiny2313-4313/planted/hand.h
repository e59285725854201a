#ifndef HAND_H
#define HAND_H

void hand_init(void);
void hand_step(void);

#endif
