#ifndef PANEL_H
#define PANEL_H

#include <stdint.h>

void panel_init(void);
uint8_t panel_key_was_pressed(void);
void panel_show(uint8_t minutes);

#endif
