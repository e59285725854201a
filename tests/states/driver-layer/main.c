// device: atmega1284p
// flags: -DF_CPU=1000000UL
// Pins, gates, a timer and a serial port through the layers of a driver library: all come out exact.
#include "driver.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

static void received(serial *self, uint8_t byte);

static serial console = {.control = &UCSR0B, .format = &UCSR0C, .bits = 8, .received = received};

void serial_attach(serial *self)
{
    pin_settings settings = {.pins = 1U << (8 + PD1), .mode = PIN_OUTPUT_HIGH};

    pins_setup(&banks[1], &settings);
    settings.pins = 1U << (8 + PD0);
    settings.mode = PIN_INPUT_PULLED;
    pins_setup(&banks[1], &settings);
    if (self->control == &UCSR0B)
        gate_open(GATE_USART0);
}

static void received(serial *self, uint8_t byte)
{
    (void)self;
    if (byte == 'x')
        pins_write(&banks[0], 0x0001, 1);
}

ISR(USART0_RX_vect)
{
    uint8_t byte = UDR0;
    if (console.received)
        console.received(&console, byte);
}

ISR(PCINT3_vect)
{
}

int main(void)
{
    static const pin_settings lamps = {.pins = 0x00FF, .mode = PIN_OUTPUT_LOW};
    static const pin_settings parked = {.pins = 0xFF00, .mode = PIN_INPUT_PULLED};

    PRR0 = 0xEF;
    gate_close(GATE_TIMER2);
    PRR0 &= ~_BV(PRTIM0);
    pins_setup(&banks[0], &lamps);
    pins_setup(&banks[0], &parked);
    pins_setup(&banks[1], &(pin_settings){.pins = 0xFFF0, .mode = PIN_OUTPUT_LOW});
    pins_setup(&banks[1], &(pin_settings){.pins = 0x000C, .mode = PIN_INPUT});
    pins_write(&banks[0], 0x00A0, 1);

    tick_start();
    sei();
    wait_for(&PINC, _BV(PC2), 5);
    serial_open(&console);
    tick_stop();
    set_sleep_mode(SLEEP_MODE_IDLE);
    sleep_enable();
    PCMSK3 = _BV(PCINT28);
    PCICR = _BV(PCIE3);
    sleep_cpu(); // state: DDRA = 0xFF, PORTA = 0b1010_000?, DDRB = 0, PORTB = 0xFF, DDRC = 0xF0, PORTC = 0, DDRD = 0xFE, PORTD = 0x03, PRR0 = 0xCD, UCSR0B = 0x98, UCSR0C = 0x06, TCCR0B = 0, TIMSK0 = 0

    serial_close(&console);
    gate_close(GATE_USART0);
    pins_setup(&banks[1], &(pin_settings){.pins = 3U << 8, .mode = PIN_OUTPUT_LOW});
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;)
        sleep_cpu(); // state: DDRD = 0xFF, PORTD = 0, UCSR0B = 0, UCSR0C = 0x06, PRR0 = 0xCF, SMCR = 0x05, PORTB = 0xFF, DDRA = 0xFF
}
