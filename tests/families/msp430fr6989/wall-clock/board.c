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
    PEDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFF;
    P6SEL0 |= COMMONS;
    P6SEL1 |= COMMONS;
    PJSEL0 |= CRYSTAL;
}

static void start_crystal(void)
{
    CSCTL0_H = CSKEY_H;
    CSCTL2 = SELA__LFXTCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL4 &= ~LFXTOFF;
    CSCTL0_H = 0;
}

void board_init(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    set_pins();
    PM5CTL0 &= ~LOCKLPM5;
    start_crystal();
    /* Below 1.8 V the part stops; the brown-out reset alone guards that here. */
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= ~SVSHE;
    PMMCTL0_H = 0;
}

/* Comes back with interrupts off. */
void board_sleep(void)
{
    __bis_SR_register(LPM3_bits | GIE);
    __disable_interrupt();
}
