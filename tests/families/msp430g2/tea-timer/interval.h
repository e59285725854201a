#ifndef INTERVAL_H
#define INTERVAL_H

void interval_wait(unsigned int seconds);
void interval_wait_sounding(unsigned int seconds);

#endif
