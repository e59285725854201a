#ifndef SOUNDER_H
#define SOUNDER_H

void sounder_init(void);
void sounder_measure(void);

#endif
