// device: stm32l053xx
// flags: -DSTM32L053xx -Wall
// A letter box that tells the house of each letter: the flap's switch wakes it, a serial line takes the news, and it sleeps again.
#include "driver.h"
#include "stm32l0xx.h"

#define FLAP 0u    /* PA0, to ground while open */
#define LINE_TX 10u /* PB10 */

static volatile uint32_t letters;

void EXTI0_1_IRQHandler(void)
{
    if (EXTI->PR & (1u << FLAP)) {
        EXTI->PR = 1u << FLAP;
        letters++;
    }
}

static void pins_prepare(void)
{
    pin_settings settings = {.pins = 0xFFFFu & ~((1u << 13) | (1u << 14)), .mode = PIN_ANALOG};

    port_clock(GPIOA, 1);
    port_clock(GPIOB, 1);
    pins_setup(GPIOA, &settings);
    settings.pins = 1u << FLAP;
    settings.mode = PIN_INPUT | PIN_FALLING;
    settings.pull = PULL_UP;
    pins_setup(GPIOA, &settings);
    settings.pins = 1u << LINE_TX;
    settings.mode = PIN_ALTERNATE;
    settings.pull = PULL_NONE;
    settings.alternate = 4;
    pins_setup(GPIOB, &settings);
}

int main(void)
{
    uint32_t told = 0;

    pins_prepare();
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    power_prepare_stop();
    for (;;) {
        __disable_irq();
        if (told == letters)
            __WFI();
        __enable_irq();
        while (told != letters) {
            told++;
            line_send('L');
        }
    }
}
