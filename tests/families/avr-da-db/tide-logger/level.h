#ifndef LEVEL_H
#define LEVEL_H

void level_init(void);
void level_log(void);

#endif
