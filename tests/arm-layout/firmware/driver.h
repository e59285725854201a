// A driver layer as part makers' libraries build them: settings passed by pointer, handles, callbacks, time-outs.
#ifndef DRIVER_H
#define DRIVER_H
#include "part.h"

typedef enum { OUTCOME_OK, OUTCOME_BUSY, OUTCOME_TIMEOUT } outcome;

typedef enum { PIN_INPUT = 0, PIN_OUTPUT = 1, PIN_ALTERNATE = 2, PIN_ANALOG = 3, PIN_EDGE = 0x10 } pin_mode;
typedef enum { PULL_NONE = 0, PULL_UP = 1, PULL_DOWN = 2 } pin_pull;

typedef struct {
    uint32_t pins;
    uint32_t mode;
    uint32_t pull;
    uint32_t speed;
    uint32_t alternate;
} pin_settings;

void pins_setup(port_registers *port, const pin_settings *settings);
void pins_release(port_registers *port, uint32_t pins);
void pins_write(port_registers *port, uint32_t pins, int level);

typedef struct ticker {
    timer_registers *timer;
    struct {
        uint32_t prescaler;
        uint32_t period;
    } settings;
    void (*elapsed)(struct ticker *self);
    volatile outcome state;
} ticker;

outcome ticker_start(ticker *self);
outcome ticker_stop(ticker *self);
void ticker_interrupt(ticker *self);
void ticker_attach(ticker *self);

outcome wait_for_bits(volatile uint32_t *at, uint32_t bits, uint32_t most_ticks);
uint32_t ticks(void);
void board_setup(void);
#endif
