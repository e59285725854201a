// device: atmega1284p
// Parked through a function pointer and a struct of register pointers.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

typedef void (*park_function)(volatile uint8_t *port);

static void park_as_output(volatile uint8_t *port)
{
    port[-1] = 0xff; // the direction register stands one below the port register
    port[0] = 0;
}

static const park_function park = park_as_output;

int main(void)
{
    volatile uint8_t *const ports[] = { &PORTA, &PORTB, &PORTC, &PORTD };
    for (int i = 0; i < 4; i++) {
        park(ports[i]);
    }
    // clean: floating-pin PA0..PA7
    // clean: floating-pin PD0..PD7
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
