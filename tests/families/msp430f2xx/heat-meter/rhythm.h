#ifndef RHYTHM_H
#define RHYTHM_H

void rhythm_init(void);

/* Returns every three minutes. */
void rhythm_sleep(void);

#endif
