#include "hall.h"

#include <stdbool.h>
#include <stdint.h>

struct port {
    volatile uint8_t *output;
    volatile uint8_t *direction;
    uint8_t inputs;
    uint8_t pulled_up;
};

static const struct port ports[] = {
    { &P1OUT, &P1DIR, SOUND, 0 }, { &P2OUT, &P2DIR, 0, 0 }, { &P3OUT, &P3DIR, 0, 0 }, { &P4OUT, &P4DIR, 0, 0 },
    { &P5OUT, &P5DIR, 0, 0 }, { &P6OUT, &P6DIR, KEY, KEY }, { &P7OUT, &P7DIR, 0, 0 }, { &P8OUT, &P8DIR, 0, 0 },
};

static volatile bool was_pressed;

void hall_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        *ports[i].output = ports[i].pulled_up;
        *ports[i].direction = (uint8_t)~ports[i].inputs;
    }
    P6REN = KEY;
    P1SEL0 |= SOUND;
    P1SEL1 |= SOUND;
    PJOUT = 0;
    PJDIR = 0xFF;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= (uint8_t)~SVSHE;
    PMMCTL0_H = 0;
    P6IES = KEY;
    P6IFG = 0;
    P6IE = KEY;
}

void hall_wait(void)
{
    __disable_interrupt();
    while (!was_pressed) {
        __bis_SR_register(LPM4_bits | GIE);
        __disable_interrupt();
    }
    was_pressed = false;
    __enable_interrupt();
}

__attribute__((interrupt(PORT6_VECTOR))) void on_key(void)
{
    P6IFG &= (uint8_t)~KEY;
    was_pressed = true;
    __bic_SR_register_on_exit(LPM4_bits);
}
