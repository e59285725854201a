#include "probe.h"

#include "stm32l4xx.h"

#define CHANNEL 8u /* PA3 */
#define FEED 1u    /* PB1 */

static volatile unsigned char is_done;

void ADC1_2_IRQHandler(void)
{
    ADC1->ISR = ADC_ISR_EOC;
    is_done = 1;
}

void probe_prepare(void)
{
    RCC->AHB2ENR |= RCC_AHB2ENR_GPIOBEN;
    GPIOB->BRR = 1u << FEED;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 2 * FEED)) | 1u << 2 * FEED;
    NVIC_EnableIRQ(ADC1_2_IRQn);
}

static void wait_in_sleep(void)
{
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __disable_irq();
    while (!is_done) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk; // finding: shallow-sleep proven {{stop2}}
}

unsigned probe_wetness(void)
{
    unsigned level;

    GPIOB->BSRR = 1u << FEED;
    RCC->AHB2ENR |= RCC_AHB2ENR_ADCEN;
    ADC123_COMMON->CCR = ADC_CCR_CKMODE_0;
    ADC1->CR = 0;
    ADC1->CR = ADC_CR_ADVREGEN; // finding: peripheral-on-in-sleep ADC1 proven
    for (volatile unsigned wait = 0; wait < 10; wait++)
        ;
    ADC1->CR |= ADC_CR_ADEN;
    while (!(ADC1->ISR & ADC_ISR_ADRDY))
        ;
    ADC1->SQR1 = CHANNEL << ADC_SQR1_SQ1_Pos;
    ADC1->IER = ADC_IER_EOCIE;
    is_done = 0;
    ADC1->CR |= ADC_CR_ADSTART;
    wait_in_sleep();
    level = ADC1->DR;
    ADC1->IER = 0;
    ADC1->CR |= ADC_CR_ADDIS;
    RCC->AHB2ENR &= ~RCC_AHB2ENR_ADCEN;
    GPIOB->BRR = 1u << FEED;
    return level;
}
