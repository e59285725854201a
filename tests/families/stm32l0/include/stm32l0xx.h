/* A small register header: structures, addresses and bits with the names that firmware for these parts is written in. */
#ifndef STM32L0XX_H
#define STM32L0XX_H
#include <stdint.h>

typedef enum {
    SysTick_IRQn = -1,
    PVD_IRQn = 1,
    RTC_IRQn = 2,
    EXTI0_1_IRQn = 5,
    EXTI2_3_IRQn = 6,
    EXTI4_15_IRQn = 7,
    ADC1_COMP_IRQn = 12,
    LPTIM1_IRQn = 13,
    TIM2_IRQn = 15,
    TIM21_IRQn = 20,
    USART2_IRQn = 28,
    RNG_LPUART1_IRQn = 29
} IRQn_Type;

#include "core_cm.h"

typedef struct {
    __IO uint32_t MODER, OTYPER, OSPEEDR, PUPDR, IDR, ODR, BSRR, LCKR, AFR[2], BRR;
} GPIO_TypeDef;
typedef struct {
    __IO uint32_t CR, ICSCR, CRRCR, CFGR, CIER, CIFR, CICR, IOPRSTR, AHBRSTR, APB2RSTR, APB1RSTR, IOPENR, AHBENR, APB2ENR,
        APB1ENR, IOPSMENR, AHBSMENR, APB2SMENR, APB1SMENR, CCIPR, CSR;
} RCC_TypeDef;
typedef struct {
    __IO uint32_t CR, CSR;
} PWR_TypeDef;
typedef struct {
    __IO uint32_t IMR, EMR, RTSR, FTSR, SWIER, PR;
} EXTI_TypeDef;
typedef struct {
    __IO uint32_t CFGR1, CFGR2, EXTICR[4], COMP1_CTRL, COMP2_CTRL, CFGR3;
} SYSCFG_TypeDef;
typedef struct {
    __IO uint32_t TR, DR, CR, ISR, PRER, WUTR, RESERVED, ALRMAR, ALRMBR, WPR;
} RTC_TypeDef;
typedef struct {
    __IO uint32_t ISR, IER, CR, CFGR1, CFGR2, SMPR, RESERVED1, RESERVED2, TR, RESERVED3, CHSELR, RESERVED4[5], DR;
} ADC_TypeDef;
typedef struct {
    __IO uint32_t CCR;
} ADC_Common_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, SMCR, DIER, SR, EGR, CCMR1, CCMR2, CCER, CNT, PSC, ARR;
} TIM_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, CR3, BRR, GTPR, RTOR, RQR, ISR, ICR, RDR, TDR;
} USART_TypeDef;
typedef struct {
    __IO uint32_t ISR, ICR, IER, CFGR, CR, CMP, ARR, CNT;
} LPTIM_TypeDef;
typedef struct {
    __IO uint32_t IDCODE, CR, APB1FZ, APB2FZ;
} DBGMCU_TypeDef;

#define TIM2 ((TIM_TypeDef *)0x40000000UL)
#define RTC ((RTC_TypeDef *)0x40002800UL)
#define LPUART1 ((USART_TypeDef *)0x40004800UL)
#define PWR ((PWR_TypeDef *)0x40007000UL)
#define LPTIM1 ((LPTIM_TypeDef *)0x40007C00UL)
#define SYSCFG ((SYSCFG_TypeDef *)0x40010000UL)
#define EXTI ((EXTI_TypeDef *)0x40010400UL)
#define TIM21 ((TIM_TypeDef *)0x40010800UL)
#define ADC1 ((ADC_TypeDef *)0x40012400UL)
#define ADC1_COMMON ((ADC_Common_TypeDef *)0x40012708UL)
#define DBGMCU ((DBGMCU_TypeDef *)0x40015800UL)
#define RCC ((RCC_TypeDef *)0x40021000UL)
#define GPIOA ((GPIO_TypeDef *)0x50000000UL)
#define GPIOB ((GPIO_TypeDef *)0x50000400UL)
#define GPIOC ((GPIO_TypeDef *)0x50000800UL)

#define RCC_CR_HSION (1UL << 0)
#define RCC_CR_HSIKERON (1UL << 1)
#define RCC_CR_HSIRDY (1UL << 2)
#define RCC_CFGR_MCOSEL_Pos 24
#define RCC_CFGR_SW_HSI 1UL
#define RCC_IOPENR_IOPAEN (1UL << 0)
#define RCC_IOPENR_IOPBEN (1UL << 1)
#define RCC_IOPENR_IOPCEN (1UL << 2)
#define RCC_APB2ENR_SYSCFGEN (1UL << 0)
#define RCC_APB2ENR_TIM21EN (1UL << 2)
#define RCC_APB2ENR_ADCEN (1UL << 9)
#define RCC_APB2ENR_DBGMCUEN (1UL << 22)
#define RCC_APB1ENR_TIM2EN (1UL << 0)
#define RCC_APB1ENR_LPUART1EN (1UL << 18)
#define RCC_APB1ENR_I2C1EN (1UL << 21)
#define RCC_APB1ENR_LPTIM1EN (1UL << 31)
#define RCC_APB1ENR_PWREN (1UL << 28)
#define RCC_CCIPR_LPUART1SEL_1 (1UL << 11)
#define RCC_CCIPR_LPTIM1SEL (3UL << 18)
#define RCC_CCIPR_LPUART1SEL_0 (1UL << 10)
#define RCC_CSR_LSION (1UL << 0)
#define RCC_CSR_LSIRDY (1UL << 1)
#define RCC_CSR_LSEON (1UL << 8)
#define RCC_CSR_LSERDY (1UL << 9)
#define RCC_CSR_RTCSEL_LSE (1UL << 16)
#define RCC_CSR_RTCEN (1UL << 18)
#define PWR_CR_LPSDSR (1UL << 0)
#define PWR_CR_PDDS (1UL << 1)
#define PWR_CR_CWUF (1UL << 2)
#define PWR_CR_DBP (1UL << 8)
#define PWR_CR_ULP (1UL << 9)
#define PWR_CR_FWU (1UL << 10)
#define RTC_CR_WUTE (1UL << 10)
#define RTC_CR_WUTIE (1UL << 14)
#define RTC_CR_WUCKSEL_2 (1UL << 2)
#define RTC_ISR_WUTF (1UL << 10)
#define RTC_ISR_WUTWF (1UL << 2)
#define EXTI_IMR_IM(n) (1UL << (n))
#define ADC_CR_ADEN (1UL << 0)
#define ADC_CR_ADDIS (1UL << 1)
#define ADC_CR_ADSTART (1UL << 2)
#define ADC_CR_ADVREGEN (1UL << 28)
#define ADC_ISR_ADRDY (1UL << 0)
#define ADC_ISR_EOC (1UL << 2)
#define ADC_IER_EOCIE (1UL << 2)
#define LPTIM_CR_ENABLE (1UL << 0)
#define LPTIM_CR_CNTSTRT (1UL << 2)
#define LPTIM_IER_ARRMIE (1UL << 1)
#define LPTIM_ICR_ARRMCF (1UL << 1)
#define TIM_CR1_CEN (1UL << 0)
#define TIM_DIER_UIE (1UL << 0)
#define TIM_SR_UIF (1UL << 0)
#define USART_CR1_UE (1UL << 0)
#define USART_CR1_UESM (1UL << 1)
#define USART_CR1_RE (1UL << 2)
#define USART_CR1_TE (1UL << 3)
#define USART_CR1_RXNEIE (1UL << 5)
#define USART_CR1_TCIE (1UL << 6)
#define USART_CR1_TXEIE (1UL << 7)
#define USART_ICR_TCCF (1UL << 6)
#define DBGMCU_CR_DBG_STOP (1UL << 1)
#endif
