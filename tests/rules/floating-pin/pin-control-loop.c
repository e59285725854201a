// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// Buffers switched off by a pointer that walks over the pin control registers; port R is left.
int main(void)
{
    PORT_t *const ports[] = { &PORTA, &PORTC, &PORTD };
    for (uint8_t p = 0; p < 3; p++) {
        register8_t *control = &ports[p]->PIN0CTRL;
        for (uint8_t bit = 0; bit < 8; bit++) {
            control[bit] = PORT_ISC_INPUT_DISABLE_gc;
        }
    }
    // finding@-7: floating-pin PR0 PR1 proven warning
    // clean: floating-pin PA0..PA7
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
