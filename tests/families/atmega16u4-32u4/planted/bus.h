#ifndef BUS_H
#define BUS_H

void bus_init(void);
void bus_click(void);

#endif
