#ifndef MINUTE_H
#define MINUTE_H

void minute_init(void);
void minute_wait(void);

#endif
