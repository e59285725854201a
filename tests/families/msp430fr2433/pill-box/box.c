#include "box.h"

#include <stdint.h>

#define COUNTS_OF_A_BLINK 200

static void park_pins(void)
{
    volatile uint8_t *const directions[] = { &P1DIR, &P2DIR, &P3DIR };
    volatile uint8_t *const outputs[] = { &P1OUT, &P2OUT, &P3OUT };

    for (uint8_t i = 0; i < sizeof directions / sizeof directions[0]; i++) {
        *outputs[i] = 0;
        *directions[i] = 0xFF;
    }
    P2DIR &= (uint8_t)~LID;
    P2OUT |= LID;
    P2REN |= LID;
    PM5CTL0 &= ~LOCKLPM5;
}

void box_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park_pins();
    /* A coin cell falls slowly: nothing watches over it in deep sleep. */
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= (uint8_t)~SVSHE;
    PMMCTL0_H = 0;
    TA0CCR0 = COUNTS_OF_A_BLINK;
    TA0CCTL0 = CCIE;
}

/* The lamp is on for as long as the timer on the reference oscillator counts. */
void box_blink(void)
{
    P1OUT |= LAMP;
    __disable_interrupt();
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    while (P1OUT & LAMP) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_blink_over(void)
{
    TA0CTL = 0;
    P1OUT &= (uint8_t)~LAMP;
    __bic_SR_register_on_exit(LPM3_bits);
}
