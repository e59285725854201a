// device: atmega1284p
// flags: -DF_CPU=8000000UL
// Peripheral handles with their registers inside and a function that reads configuration back.
#include <avr/io.h>
#include <avr/sleep.h>
#include <stdbool.h>

typedef struct {
    volatile uint8_t status;
    volatile uint8_t control_b;
    volatile uint8_t control_c;
    volatile uint8_t reserved;
    volatile uint16_t baud;
    volatile uint8_t data;
} serial_registers_t;

typedef struct {
    serial_registers_t *registers;
    uint32_t baud;
    bool receive;
    bool transmit;
} serial_t;

#define SERIAL0 ((serial_registers_t *)0xC0)
#define SERIAL1 ((serial_registers_t *)0xC8)

static void serial_open(serial_t *serial)
{
    serial->registers->baud = (uint16_t)((F_CPU + serial->baud * 4) / (serial->baud * 8) - 1);
    serial->registers->status = _BV(U2X0);
    serial->registers->control_b = (serial->receive ? _BV(RXEN0) : 0) | (serial->transmit ? _BV(TXEN0) : 0);
    serial->registers->control_c |= _BV(USBS0);
}

static void serial_close(serial_t *serial)
{
    if (serial->registers->control_b & _BV(TXEN0))
        serial->registers->control_b &= ~_BV(TXEN0);
    serial->registers->control_b &= ~_BV(RXEN0);
}

int main(void)
{
    serial_t console = {.registers = SERIAL0, .baud = 9600, .transmit = true};
    serial_t radio = {SERIAL1, 38400, true, true};
    serial_open(&console);
    serial_open(&radio);
    serial_close(&radio);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: UCSR0B = 0x08, UCSR1B = 0x00, UBRR0L = 103, UBRR1L = 25, UCSR0C = 0x0e
}
