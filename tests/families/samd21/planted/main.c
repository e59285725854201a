// device: samd21g18a
// flags: -D__SAMD21G18A__ -Wall
// Opens a greenhouse's vent in the afternoon, and at once when a button is pressed. Between minutes it stands by on the crystal.
#include "board.h"
#include "clock.h"
#include "samd21.h"

#define DAY (24u * 60u)
#define OPENS_AT (12u * 60u)
#define CLOSES_AT (18u * 60u)

static volatile uint8_t is_forced;

void EIC_Handler(void)
{
    // The level stays as long as the button does: one press is one interrupt, the next minute listens again.
    EIC->INTENCLR.reg = 1ul << BUTTON;
    EIC->INTFLAG.reg = 1ul << BUTTON;
    is_forced = 1;
}

static void button_listen(void)
{
    EIC->INTFLAG.reg = 1ul << BUTTON;
    EIC->INTENSET.reg = 1ul << BUTTON;
}

// A level needs no clock to be seen.
static void button_init(void)
{
    EIC->CONFIG[BUTTON / 8].bit.SENSE1 = 5;
    EIC->WAKEUP.reg = 1ul << BUTTON;
    EIC->CTRL.reg = EIC_CTRL_ENABLE;
    while (EIC->STATUS.bit.SYNCBUSY)
        ;
    NVIC_EnableIRQ(EIC_IRQn);
}

// What this product never uses gets no bus clock.
static void clocks_close(void)
{
    PM->APBAMASK.reg &= ~PM_APBAMASK_WDT;
    PM->AHBMASK.reg &= ~(PM_AHBMASK_USB | PM_AHBMASK_DMAC);
    PM->APBBMASK.reg &= ~(PM_APBBMASK_USB | PM_APBBMASK_DMAC);
    PM->APBCMASK.reg = 0;
    TC3->COUNT16.CTRLA.reg = TC_COUNT16_CTRLA_PRESCALER(7); // finding: gated-write TC3.CTRLA proven
    PM->APBCMASK.bit.TC5_ = 1; // finding: peripheral-clock-left-on TC5 proven
    SYSCTRL->VREG.bit.RUNSTDBY = 1;
}

int main(void)
{
    clocks_close();
    board_park();
    clock_start();
    button_init();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        uint32_t minute = clock_minutes() % DAY;

        opener_set(is_forced || (minute >= OPENS_AT && minute < CLOSES_AT));
        button_listen();
        __DSB();
        __WFI(); // finding: full-power-regulator VREG proven
    }
}
