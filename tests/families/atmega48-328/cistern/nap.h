#ifndef NAP_H
#define NAP_H

void nap_init(void);
void nap(void);

#endif
