/* A small register header: structures, addresses and bits with the names that firmware for these parts is written in. */
#ifndef STM32G0XX_H
#define STM32G0XX_H
#include <stdint.h>

typedef enum {
    SysTick_IRQn = -1,
    PVD_IRQn = 1,
    RTC_TAMP_IRQn = 2,
    EXTI0_1_IRQn = 5,
    EXTI2_3_IRQn = 6,
    EXTI4_15_IRQn = 7,
    ADC1_IRQn = 12,
    ADC1_COMP_IRQn = 12,
    TIM3_IRQn = 16,
    LPTIM1_IRQn = 17,
    TIM6_DAC_LPTIM1_IRQn = 17,
    TIM14_IRQn = 19,
    USART1_IRQn = 27,
    USART3_4_LPUART1_IRQn = 29
} IRQn_Type;

#include "../../stm32l0/include/core_cm.h"

typedef struct {
    __IO uint32_t MODER, OTYPER, OSPEEDR, PUPDR, IDR, ODR, BSRR, LCKR, AFR[2], BRR;
} GPIO_TypeDef;
typedef struct {
    __IO uint32_t CR, ICSCR, CFGR, PLLCFGR, RESERVED0, RESERVED1, CIER, CIFR, CICR, IOPRSTR, AHBRSTR, APBRSTR1, APBRSTR2, IOPENR,
        AHBENR, APBENR1, APBENR2, IOPSMENR, AHBSMENR, APBSMENR1, APBSMENR2, CCIPR, RESERVED2, BDCR, CSR;
} RCC_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, CR3, CR4, SR1, SR2, SCR, RESERVED, PUCRA, PDCRA, PUCRB, PDCRB, PUCRC, PDCRC, PUCRD, PDCRD;
} PWR_TypeDef;
typedef struct {
    __IO uint32_t RTSR1, FTSR1, SWIER1, RPR1, FPR1;
    uint32_t RESERVED0[19];
    __IO uint32_t EXTICR[4];
    uint32_t RESERVED1[4];
    __IO uint32_t IMR1, EMR1, RESERVED2, RESERVED3, IMR2, EMR2;
} EXTI_TypeDef;
typedef struct {
    __IO uint32_t CFGR1;
} SYSCFG_TypeDef;
typedef struct {
    __IO uint32_t TR, DR, SSR, ICSR, PRER, WUTR, CR, RESERVED0, RESERVED1, WPR, CALR, SHIFTR, TSTR, TSDR, TSSSR, RESERVED2, ALRMAR,
        ALRMASSR, ALRMBR, ALRMBSSR, SR, MISR, RESERVED3, SCR;
} RTC_TypeDef;
typedef struct {
    __IO uint32_t ISR, IER, CR, CFGR1, CFGR2, SMPR, RESERVED1, RESERVED2, TR1, TR2, CHSELR, TR3, RESERVED3[4], DR;
} ADC_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, SMCR, DIER, SR, EGR, CCMR1, CCMR2, CCER, CNT, PSC, ARR;
} TIM_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, CR3, BRR, GTPR, RTOR, RQR, ISR, ICR, RDR, TDR, PRESC;
} USART_TypeDef;
typedef struct {
    __IO uint32_t ISR, ICR, IER, CFGR, CR, CMP, ARR, CNT;
} LPTIM_TypeDef;
typedef struct {
    __IO uint32_t CSR;
} COMP_TypeDef;
typedef struct {
    __IO uint32_t CR, SWTRIGR, DHR12R1;
} DAC_TypeDef;
typedef struct {
    __IO uint32_t CFG1, CFG2, RESERVED, CR, IMR, SR, ICR;
} UCPD_TypeDef;
typedef struct {
    __IO uint32_t IDCODE, CR;
} DBG_TypeDef;

#define TIM3 ((TIM_TypeDef *)0x40000400UL)
#define TIM14 ((TIM_TypeDef *)0x40002000UL)
#define RTC ((RTC_TypeDef *)0x40002800UL)
#define PWR ((PWR_TypeDef *)0x40007000UL)
#define DAC1 ((DAC_TypeDef *)0x40007400UL)
#define LPTIM1 ((LPTIM_TypeDef *)0x40007C00UL)
#define LPUART1 ((USART_TypeDef *)0x40008000UL)
#define UCPD1 ((UCPD_TypeDef *)0x4000A000UL)
#define SYSCFG ((SYSCFG_TypeDef *)0x40010000UL)
#define COMP1 ((COMP_TypeDef *)0x40010200UL)
#define ADC1 ((ADC_TypeDef *)0x40012400UL)
#define USART1 ((USART_TypeDef *)0x40013800UL)
#define DBG ((DBG_TypeDef *)0x40015800UL)
#define RCC ((RCC_TypeDef *)0x40021000UL)
#define EXTI ((EXTI_TypeDef *)0x40021800UL)
#define GPIOA ((GPIO_TypeDef *)0x50000000UL)
#define GPIOB ((GPIO_TypeDef *)0x50000400UL)
#define GPIOC ((GPIO_TypeDef *)0x50000800UL)
#define GPIOD ((GPIO_TypeDef *)0x50000C00UL)

#define RCC_CR_HSION (1UL << 8)
#define RCC_CR_HSIKERON (1UL << 9)
#define RCC_CR_HSIDIV_Pos 11
#define RCC_CR_HSIDIV (7UL << 11)
#define RCC_CFGR_MCOSEL_Pos 24
#define RCC_IOPENR_GPIOAEN (1UL << 0)
#define RCC_IOPENR_GPIOBEN (1UL << 1)
#define RCC_IOPENR_GPIOCEN (1UL << 2)
#define RCC_APBENR1_TIM3EN (1UL << 1)
#define RCC_APBENR1_LPUART1EN (1UL << 20)
#define RCC_APBENR1_UCPD1EN (1UL << 25)
#define RCC_APBENR1_DBGEN (1UL << 27)
#define RCC_APBENR1_PWREN (1UL << 28)
#define RCC_APBENR1_DAC1EN (1UL << 29)
#define RCC_APBENR1_LPTIM1EN (1UL << 31)
#define RCC_APBENR2_SYSCFGEN (1UL << 0)
#define RCC_APBENR2_USART1EN (1UL << 14)
#define RCC_APBENR2_TIM14EN (1UL << 15)
#define RCC_APBENR2_ADCEN (1UL << 20)
#define RCC_APBSMENR1_TIM3SMEN (1UL << 1)
#define RCC_CCIPR_USART1SEL_Pos 0
#define RCC_CCIPR_LPUART1SEL_Pos 10
#define RCC_CCIPR_LPTIM1SEL_Pos 18
#define RCC_BDCR_LSEON (1UL << 0)
#define RCC_BDCR_LSERDY (1UL << 1)
#define RCC_BDCR_RTCSEL_0 (1UL << 8)
#define RCC_BDCR_RTCEN (1UL << 15)
#define RCC_BDCR_LSCOEN (1UL << 24)
#define RCC_BDCR_LSCOSEL (1UL << 25)
#define PWR_CR1_LPMS (7UL << 0)
#define PWR_CR1_LPMS_0 (1UL << 0)
#define PWR_CR1_LPMS_1 (2UL << 0)
#define PWR_CR1_FPD_STOP (1UL << 3)
#define PWR_CR1_DBP (1UL << 8)
#define PWR_CR1_VOS (3UL << 9)
#define PWR_CR1_VOS_1 (2UL << 9)
#define PWR_CR1_LPR (1UL << 14)
#define PWR_CR3_EWUP1 (1UL << 0)
#define PWR_CR3_ENB_ULP (1UL << 9)
#define PWR_CR3_APC (1UL << 10)
#define PWR_SR2_REGLPF (1UL << 9)
#define SYSCFG_CFGR1_UCPD1_STROBE (1UL << 9)
#define SYSCFG_CFGR1_UCPD2_STROBE (1UL << 10)
#define RTC_CR_WUCKSEL_2 (1UL << 2)
#define RTC_CR_WUTE (1UL << 10)
#define RTC_CR_WUTIE (1UL << 14)
#define RTC_ICSR_WUTWF (1UL << 2)
#define RTC_SR_WUTF (1UL << 2)
#define RTC_SCR_CWUTF (1UL << 2)
#define ADC_ISR_ADRDY (1UL << 0)
#define ADC_ISR_EOC (1UL << 2)
#define ADC_IER_EOCIE (1UL << 2)
#define ADC_CR_ADEN (1UL << 0)
#define ADC_CR_ADDIS (1UL << 1)
#define ADC_CR_ADSTART (1UL << 2)
#define ADC_CR_ADVREGEN (1UL << 28)
#define ADC_CFGR2_CKMODE_1 (2UL << 30)
#define DAC_CR_EN1 (1UL << 0)
#define COMP_CSR_EN (1UL << 0)
#define LPTIM_CFGR_PRESC_Pos 9
#define LPTIM_CR_ENABLE (1UL << 0)
#define LPTIM_CR_SNGSTRT (1UL << 1)
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
#define USART_CR1_RXNEIE_RXFNEIE (1UL << 5)
#define USART_CR1_TCIE (1UL << 6)
#define USART_CR1_TXEIE_TXFNFIE (1UL << 7)
#define USART_ISR_RXNE_RXFNE (1UL << 5)
#define USART_ISR_TC (1UL << 6)
#define USART_ICR_TCCF (1UL << 6)
#define DBG_CR_DBG_STOP (1UL << 1)
#endif
