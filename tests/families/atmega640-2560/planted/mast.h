#ifndef MAST_H
#define MAST_H

void mast_init(void);
void mast_light(void);

#endif
