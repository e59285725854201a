#ifndef LID_H
#define LID_H

#include <stdbool.h>

void lid_init(void);
bool lid_was_opened(void);

#endif
