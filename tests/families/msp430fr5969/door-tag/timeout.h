#ifndef TIMEOUT_H
#define TIMEOUT_H

#include <stdbool.h>

void timeout_init(void);
void timeout_start(void);
void timeout_stop(void);
bool timeout_is_running(void);
bool timeout_is_over(void);

#endif
