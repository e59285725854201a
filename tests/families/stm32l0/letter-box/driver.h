// A driver layer of the usual kind: settings passed by pointer, one function a resource.
#ifndef DRIVER_H
#define DRIVER_H
#include "stm32l0xx.h"

typedef enum { PIN_INPUT = 0, PIN_OUTPUT = 1, PIN_ALTERNATE = 2, PIN_ANALOG = 3, PIN_FALLING = 0x10 } pin_mode;
typedef enum { PULL_NONE = 0, PULL_UP = 1, PULL_DOWN = 2 } pin_pull;

typedef struct {
    uint32_t pins;
    uint32_t mode;
    uint32_t pull;
    uint32_t alternate;
} pin_settings;

void port_clock(GPIO_TypeDef *port, int is_on);
void pins_setup(GPIO_TypeDef *port, const pin_settings *settings);
void power_prepare_stop(void);
void line_send(uint8_t byte);
#endif
