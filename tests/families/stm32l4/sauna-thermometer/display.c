#include "stm32l4xx.h"
#include "thermometer.h"

static const uint8_t digits[] = {0x3F, 0x06, 0x5B, 0x4F, 0x66, 0x6D, 0x7D, 0x07, 0x7F, 0x6F};

void display_start(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_LCDEN;
    LCD->FCR = 4u << 10 | 1u << 18;
    LCD->CR = 3u << 2 | 2u << 5;
    LCD->CR |= LCD_CR_LCDEN;
}

void display_show(unsigned tenths)
{
    uint32_t shown = 0;

    for (int i = 0; i < 4; i++) {
        shown |= (uint32_t)digits[tenths % 10u] << 8 * i;
        tenths /= 10u;
    }
    LCD->RAM[0] = shown;
    LCD->SR = LCD_SR_UDR;
}
