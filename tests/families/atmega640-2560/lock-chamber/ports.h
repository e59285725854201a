#ifndef PORTS_H
#define PORTS_H

void ports_init(void);

#endif
