#ifndef HORN_H
#define HORN_H

void horn_sound(void);

#endif
