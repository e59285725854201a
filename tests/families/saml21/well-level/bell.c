#include "bell.h"

#include "saml21.h"

#define BELL 16u /* PA16 */
#define TICKS 10u
#define GENERATOR 2u
#define CHANNEL_OF_TIMER 27u
#define SOURCE_ULTRA_LOW_POWER 3u

static volatile unsigned char is_due;
static unsigned char ticks_left;

void TC0_Handler(void)
{
    TC0->COUNT16.INTFLAG.reg = TC_INTFLAG_OVF;
    is_due = 1;
}

// 32 ticks a second from the oscillator that never stops; the timer goes on in standby while the bell rings.
void bell_init(void)
{
    PORT->Group[0].OUTCLR.reg = 1ul << BELL;
    PORT->Group[0].DIRSET.reg = 1ul << BELL;
    GCLK->GENCTRL[GENERATOR].reg = GCLK_GENCTRL_SRC(SOURCE_ULTRA_LOW_POWER) | GCLK_GENCTRL_GENEN;
    while (GCLK->SYNCBUSY.reg)
        ;
    GCLK->PCHCTRL[CHANNEL_OF_TIMER].reg = GCLK_PCHCTRL_GEN(GENERATOR) | GCLK_PCHCTRL_CHEN;
    TC0->COUNT16.CTRLA.reg = TC_CTRLA_RUNSTDBY;
    TC0->COUNT16.WAVE.reg = TC_WAVE_WAVEGEN(1);
    TC0->COUNT16.CC[0].reg = 1023;
    TC0->COUNT16.INTENSET.reg = TC_INTENSET_OVF;
    NVIC_EnableIRQ(TC0_IRQn);
}

void bell_ring(void)
{
    ticks_left = TICKS;
    PORT->Group[0].OUTSET.reg = 1ul << BELL;
    TC0->COUNT16.CTRLA.bit.ENABLE = 1;
    while (TC0->COUNT16.SYNCBUSY.reg)
        ;
}

int bell_is_due(void)
{
    return is_due;
}

void bell_tick(void)
{
    if (!is_due)
        return;
    is_due = 0;
    if (ticks_left > 0 && --ticks_left == 0) {
        PORT->Group[0].OUTCLR.reg = 1ul << BELL;
        TC0->COUNT16.CTRLA.bit.ENABLE = 0;
        while (TC0->COUNT16.SYNCBUSY.reg)
            ;
    }
}
