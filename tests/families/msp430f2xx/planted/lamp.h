#ifndef LAMP_H
#define LAMP_H

void lamp_init(void);
void lamp_flash(void);

#endif
