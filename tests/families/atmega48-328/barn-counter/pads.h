#ifndef PADS_H
#define PADS_H

void pads_init(void);

#endif
