#ifndef REST_H
#define REST_H

void rest_until_minute(void);

#endif
