#ifndef KEY_H
#define KEY_H

void key_wait(void);

#endif
