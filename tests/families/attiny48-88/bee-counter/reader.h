#ifndef READER_H
#define READER_H

void reader_init(void);

#endif
