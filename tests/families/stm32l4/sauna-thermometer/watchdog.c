#include "stm32l4xx.h"
#include "thermometer.h"

// Some 30 seconds at the slow oscillator's 32 kHz.
void watchdog_start(void)
{
    IWDG->KR = 0xCCCC;
    IWDG->KR = 0x5555;
    IWDG->PR = 6;
    IWDG->RLR = 0xFFF;
}

void watchdog_feed(void)
{
    IWDG->KR = 0xAAAA;
}
