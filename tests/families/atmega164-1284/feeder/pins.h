#ifndef PINS_H
#define PINS_H

#define WEIGHT_INPUT PA2
#define BRIDGE_FEED PA5
#define PERCH_SWITCH PB3
#define READER_PRESENT PC0
#define READER_OUT PD1

void pins_init(void);

#endif
