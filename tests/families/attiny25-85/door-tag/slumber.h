#ifndef SLUMBER_H
#define SLUMBER_H

void slumber_init(void);
void slumber(void);

#endif
