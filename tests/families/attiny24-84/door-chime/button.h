#ifndef BUTTON_H
#define BUTTON_H

void button_init(void);
void button_wait(void);

#endif
