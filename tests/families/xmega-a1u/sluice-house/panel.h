#ifndef PANEL_H
#define PANEL_H

#include <stdint.h>

void panel_init(void);
void panel_toggle(uint8_t sluice);
void panel_show(void);
void panel_dark(void);

#endif
