#ifndef NODE_H
#define NODE_H
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <stdint.h>

#define SENSOR_SUPPLY PB0
#define ALARM PB1

void node_start(void);
void node_rest(uint8_t naps);
void node_alarm(void);
uint16_t sensor_read(void);

#endif
