#include "board.h"

#include <stdint.h>

struct port_setting {
    volatile uint8_t *direction;
    volatile uint8_t *output;
    volatile uint8_t *pull;
    uint8_t outputs;
    uint8_t pulled_up;
};

static const struct port_setting settings[] = {
    { &P1DIR, &P1OUT, &P1REN, (uint8_t)~CONTACT, CONTACT },
    { &P2DIR, &P2OUT, &P2REN, 0xFF, 0 },
    { &P3DIR, &P3OUT, &P3REN, 0xFF, 0 },
    { &P4DIR, &P4OUT, &P4REN, 0xFF, 0 },
};

void board_init(void)
{
    WDTCTL = WDTPW + WDTHOLD;
    for (uint8_t i = 0; i < sizeof settings / sizeof settings[0]; i++) {
        const struct port_setting *port = &settings[i];
        *port->output = port->pulled_up;
        *port->direction = port->outputs;
        *port->pull = port->pulled_up;
    }
    PJOUT = 0;
    PJDIR = BIT0 | BIT1 | BIT2 | BIT3 | BIT4 | BIT5 | BIT6 | BIT7;
    PM5CTL0 &= ~LOCKLPM5;

    /* The watch over the supply pauses in deep sleep; two alkaline cells fall slowly. */
    PMMCTL0 = PMMPW;
}

void buzzer_on(void)
{
    P3OUT |= BUZZER;
}

void buzzer_off(void)
{
    P3OUT &= (uint8_t)~BUZZER;
}
