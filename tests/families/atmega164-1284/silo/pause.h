#ifndef PAUSE_H
#define PAUSE_H

void pause_init(void);
void pause(void);

#endif
