#ifndef GATES_H
#define GATES_H

void gates_init(void);

#endif
