#ifndef SCALE_H
#define SCALE_H

void scale_init(void);
void scale_weigh(void);

#endif
