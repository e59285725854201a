#ifndef BEAT_H
#define BEAT_H

void beat_init(void);
void beat(void);

#endif
