#ifndef BOLT_H
#define BOLT_H

void bolt_init(void);

/* Draws the bolt back, waits, and lets it go. */
void bolt_open(void);

#endif
