#include "board.h"

static void set_pins(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0xFFFF;
    PEOUT = 0;
    PEDIR = (unsigned int)~SENSOR;
    PJOUT = 0;
    PJDIR = 0xFF;
    P6SEL0 |= COMMONS;
    P6SEL1 |= COMMONS;
    P9SEL0 |= SENSOR;
    P9SEL1 |= SENSOR;
}

/* The slow oscillator inside will do: nobody counts the minutes. */
void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__VLOCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL0_H = 0;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= ~SVSHE;
    PMMCTL0_H = 0;
}

/* 9400 Hz divided by 8 twice: 8814 counts are a minute, more or less. */
void board_start_minutes(void)
{
    TA0EX0 = 7;
    TA0CCR0 = 8813;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | ID__8 | MC__UP | TACLR;
}

void board_sleep(void)
{
    __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_minute(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
