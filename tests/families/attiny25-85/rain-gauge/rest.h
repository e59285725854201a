#ifndef REST_H
#define REST_H

void rest_init(void);
void rest(void);

#endif
