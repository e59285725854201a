// A driver layer as part makers' libraries build them: settings passed by pointer, handles, callbacks, time-outs on a tick.
#ifndef DRIVER_H
#define DRIVER_H
#include <avr/io.h>
#include <stddef.h>
#include <stdint.h>

typedef struct {
    volatile uint8_t in;
    volatile uint8_t direction;
    volatile uint8_t out;
} port_registers;

#define PORT_A ((port_registers *)&PINA)
#define PORT_B ((port_registers *)&PINB)
#define PORT_C ((port_registers *)&PINC)
#define PORT_D ((port_registers *)&PIND)

typedef enum { OUTCOME_OK, OUTCOME_BUSY, OUTCOME_TIMEOUT } outcome;
typedef enum { PIN_INPUT, PIN_INPUT_PULLED, PIN_OUTPUT_LOW, PIN_OUTPUT_HIGH } pin_mode;

typedef struct {
    uint16_t pins; /* a bit each, over a pair of ports: low byte the first */
    pin_mode mode;
} pin_settings;

typedef struct {
    port_registers *ports[2];
} bank;

extern const bank banks[2];

void pins_setup(const bank *bank, const pin_settings *settings);
void pins_write(const bank *bank, uint16_t pins, uint8_t level);

typedef enum { GATE_TWI = PRTWI, GATE_TIMER2 = PRTIM2, GATE_SPI = PRSPI, GATE_ADC = PRADC, GATE_USART0 = PRUSART0 } gate;
void gate_open(gate which);
void gate_close(gate which);

typedef struct serial {
    volatile uint8_t *control;
    volatile uint8_t *format;
    uint8_t bits;
    uint8_t is_open;
    void (*received)(struct serial *self, uint8_t byte);
} serial;

outcome serial_open(serial *self);
outcome serial_close(serial *self);
void serial_attach(serial *self);

outcome wait_for(volatile uint8_t *at, uint8_t bits, uint16_t most_ticks);
uint16_t tick_now(void);
void tick_start(void);
void tick_stop(void);
#endif
