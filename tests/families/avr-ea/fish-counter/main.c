// device: avr64ea48
// flags: -DF_CPU=3333333UL -Wall
// Counts fish in a pass by the falling edges of a light barrier; every pin of the part senses them without a clock.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define BARRIER_bm PIN5_bm
#define LIGHT_bm PIN1_bm

static volatile uint16_t fish;

ISR(PORTD_PORT_vect)
{
    PORTD.INTFLAGS = BARRIER_bm;
    fish++;
}

static void pins_init(void)
{
    PORT_t *const ports[] = { &PORTA, &PORTB, &PORTC, &PORTD, &PORTE, &PORTF };

    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc;
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        ports[i]->PINCTRLUPD = 0xFF;
    }
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm | PORT_ISC_FALLING_gc;
    PORTE.OUTCLR = LIGHT_bm;
    PORTE.DIRSET = LIGHT_bm;
}

int main(void)
{
    pins_init();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        if (fish & 1) {
            PORTE.OUTSET = LIGHT_bm;
        } else {
            PORTE.OUTCLR = LIGHT_bm;
        }
    }
}
