#ifndef IMPELLER_H
#define IMPELLER_H

void impeller_init(void);

#endif
