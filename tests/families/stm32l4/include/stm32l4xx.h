/* A small register header: structures, addresses and bits with the names that firmware for these parts is written in. */
#ifndef STM32L4XX_H
#define STM32L4XX_H
#include <stdint.h>

typedef enum {
    SysTick_IRQn = -1,
    PVD_PVM_IRQn = 1,
    RTC_WKUP_IRQn = 3,
    EXTI0_IRQn = 6,
    EXTI1_IRQn = 7,
    EXTI2_IRQn = 8,
    EXTI3_IRQn = 9,
    EXTI4_IRQn = 10,
    DMA1_Channel1_IRQn = 11,
    ADC1_2_IRQn = 18,
    ADC1_IRQn = 18,
    EXTI9_5_IRQn = 23,
    TIM1_UP_TIM16_IRQn = 25,
    TIM2_IRQn = 28,
    USART2_IRQn = 38,
    EXTI15_10_IRQn = 40,
    RTC_Alarm_IRQn = 41,
    COMP_IRQn = 64,
    LPTIM1_IRQn = 65,
    LPTIM2_IRQn = 66,
    LPUART1_IRQn = 70
} IRQn_Type;

#include "../../stm32l0/include/core_cm.h"

typedef struct {
    __IO uint32_t MODER, OTYPER, OSPEEDR, PUPDR, IDR, ODR, BSRR, LCKR, AFR[2], BRR, ASCR;
} GPIO_TypeDef;
typedef struct {
    __IO uint32_t CR, ICSCR, CFGR, PLLCFGR, PLLSAI1CFGR, PLLSAI2CFGR, CIER, CIFR, CICR, RESERVED0, AHB1RSTR, AHB2RSTR, AHB3RSTR,
        RESERVED1, APB1RSTR1, APB1RSTR2, APB2RSTR, RESERVED2, AHB1ENR, AHB2ENR, AHB3ENR, RESERVED3, APB1ENR1, APB1ENR2, APB2ENR,
        RESERVED4, AHB1SMENR, AHB2SMENR, AHB3SMENR, RESERVED5, APB1SMENR1, APB1SMENR2, APB2SMENR, RESERVED6, CCIPR, RESERVED7,
        BDCR, CSR, CRRCR;
} RCC_TypeDef;
typedef struct {
    __IO uint32_t CR1, CR2, CR3, CR4, SR1, SR2, SCR, RESERVED, PUCRA, PDCRA, PUCRB, PDCRB, PUCRC, PDCRC, PUCRD, PDCRD, PUCRE, PDCRE,
        PUCRF, PDCRF, PUCRG, PDCRG, PUCRH, PDCRH;
} PWR_TypeDef;
typedef struct {
    __IO uint32_t IMR1, EMR1, RTSR1, FTSR1, SWIER1, PR1, RESERVED1, RESERVED2, IMR2, EMR2, RTSR2, FTSR2, SWIER2, PR2;
} EXTI_TypeDef;
typedef struct {
    __IO uint32_t MEMRMP, CFGR1, EXTICR[4], SCSR, CFGR2, SWPR, SKR;
} SYSCFG_TypeDef;
typedef struct {
    __IO uint32_t TR, DR, CR, ISR, PRER, WUTR, RESERVED, ALRMAR, ALRMBR, WPR;
} RTC_TypeDef;
typedef struct {
    __IO uint32_t ISR, IER, CR, CFGR, CFGR2, SMPR1, SMPR2, RESERVED1, TR1, TR2, TR3, RESERVED2, SQR1, SQR2, SQR3, SQR4, DR;
} ADC_TypeDef;
typedef struct {
    __IO uint32_t CSR, RESERVED, CCR, CDR;
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
    __IO uint32_t CSR;
} COMP_TypeDef;
typedef struct {
    __IO uint32_t CSR, CCR;
} VREFBUF_TypeDef;
typedef struct {
    __IO uint32_t CR, FCR, SR, CLR, RESERVED, RAM[16];
} LCD_TypeDef;
typedef struct {
    __IO uint32_t CR, SWTRIGR, DHR12R1;
} DAC_TypeDef;
typedef struct {
    __IO uint32_t KR, PR, RLR, SR, WINR;
} IWDG_TypeDef;
typedef struct {
    __IO uint32_t IDCODE, CR;
} DBGMCU_TypeDef;

#define TIM2 ((TIM_TypeDef *)0x40000000UL)
#define LCD ((LCD_TypeDef *)0x40002400UL)
#define RTC ((RTC_TypeDef *)0x40002800UL)
#define IWDG ((IWDG_TypeDef *)0x40003000UL)
#define USART2 ((USART_TypeDef *)0x40004400UL)
#define PWR ((PWR_TypeDef *)0x40007000UL)
#define DAC1 ((DAC_TypeDef *)0x40007400UL)
#define LPTIM1 ((LPTIM_TypeDef *)0x40007C00UL)
#define LPUART1 ((USART_TypeDef *)0x40008000UL)
#define LPTIM2 ((LPTIM_TypeDef *)0x40009400UL)
#define SYSCFG ((SYSCFG_TypeDef *)0x40010000UL)
#define VREFBUF ((VREFBUF_TypeDef *)0x40010030UL)
#define COMP1 ((COMP_TypeDef *)0x40010200UL)
#define COMP2 ((COMP_TypeDef *)0x40010204UL)
#define EXTI ((EXTI_TypeDef *)0x40010400UL)
#define TIM16 ((TIM_TypeDef *)0x40014400UL)
#define RCC ((RCC_TypeDef *)0x40021000UL)
#define GPIOA ((GPIO_TypeDef *)0x48000000UL)
#define GPIOB ((GPIO_TypeDef *)0x48000400UL)
#define GPIOC ((GPIO_TypeDef *)0x48000800UL)
#define GPIOD ((GPIO_TypeDef *)0x48000C00UL)
#define GPIOE ((GPIO_TypeDef *)0x48001000UL)
#define GPIOH ((GPIO_TypeDef *)0x48001C00UL)
#define ADC1 ((ADC_TypeDef *)0x50040000UL)
#define ADC123_COMMON ((ADC_Common_TypeDef *)0x50040300UL)
#define DBGMCU ((DBGMCU_TypeDef *)0xE0042000UL)

#define RCC_CR_MSION (1UL << 0)
#define RCC_CR_MSIRGSEL (1UL << 3)
#define RCC_CR_MSIRANGE_Pos 4
#define RCC_CR_MSIRANGE (15UL << 4)
#define RCC_CR_HSION (1UL << 8)
#define RCC_CR_HSIKERON (1UL << 9)
#define RCC_CR_HSIRDY (1UL << 10)
#define RCC_CFGR_SW_HSI 1UL
#define RCC_CFGR_MCOSEL_Pos 24
#define RCC_AHB1ENR_DMA1EN (1UL << 0)
#define RCC_AHB2ENR_GPIOAEN (1UL << 0)
#define RCC_AHB2ENR_GPIOBEN (1UL << 1)
#define RCC_AHB2ENR_GPIOCEN (1UL << 2)
#define RCC_AHB2ENR_GPIODEN (1UL << 3)
#define RCC_AHB2ENR_GPIOHEN (1UL << 7)
#define RCC_AHB2ENR_ADCEN (1UL << 13)
#define RCC_AHB2ENR_RNGEN (1UL << 18)
#define RCC_APB1ENR1_TIM2EN (1UL << 0)
#define RCC_APB1ENR1_LCDEN (1UL << 9)
#define RCC_APB1ENR1_SPI2EN (1UL << 14)
#define RCC_APB1ENR1_USART2EN (1UL << 17)
#define RCC_APB1ENR1_I2C1EN (1UL << 21)
#define RCC_APB1ENR1_PWREN (1UL << 28)
#define RCC_APB1ENR1_DAC1EN (1UL << 29)
#define RCC_APB1ENR1_LPTIM1EN (1UL << 31)
#define RCC_APB1ENR2_LPUART1EN (1UL << 0)
#define RCC_APB1ENR2_LPTIM2EN (1UL << 5)
#define RCC_APB2ENR_SYSCFGEN (1UL << 0)
#define RCC_APB2ENR_TIM16EN (1UL << 17)
#define RCC_APB1SMENR1_TIM2SMEN (1UL << 0)
#define RCC_CCIPR_USART2SEL_Pos 2
#define RCC_CCIPR_LPUART1SEL_Pos 10
#define RCC_CCIPR_LPTIM1SEL_Pos 18
#define RCC_CCIPR_LPTIM2SEL_Pos 20
#define RCC_CCIPR_ADCSEL_Pos 28
#define RCC_BDCR_LSEON (1UL << 0)
#define RCC_BDCR_LSERDY (1UL << 1)
#define RCC_BDCR_RTCSEL_0 (1UL << 8)
#define RCC_BDCR_RTCEN (1UL << 15)
#define RCC_BDCR_LSCOEN (1UL << 24)
#define RCC_BDCR_LSCOSEL (1UL << 25)
#define PWR_CR1_LPMS (7UL << 0)
#define PWR_CR1_LPMS_STOP1 (1UL << 0)
#define PWR_CR1_LPMS_STOP2 (2UL << 0)
#define PWR_CR1_LPMS_STANDBY (3UL << 0)
#define PWR_CR1_LPMS_SHUTDOWN (4UL << 0)
#define PWR_CR1_DBP (1UL << 8)
#define PWR_CR1_VOS (3UL << 9)
#define PWR_CR1_VOS_1 (2UL << 9)
#define PWR_CR1_LPR (1UL << 14)
#define PWR_CR2_PVDE (1UL << 0)
#define PWR_CR3_EWUP1 (1UL << 0)
#define PWR_CR3_EWUP2 (1UL << 1)
#define PWR_CR3_APC (1UL << 10)
#define PWR_CR4_WP1 (1UL << 0)
#define PWR_SCR_CWUF (31UL << 0)
#define EXTI_IMR1_IM(n) (1UL << (n))
#define RTC_CR_WUCKSEL_2 (1UL << 2)
#define RTC_CR_ALRAE (1UL << 8)
#define RTC_CR_WUTE (1UL << 10)
#define RTC_CR_ALRAIE (1UL << 12)
#define RTC_CR_WUTIE (1UL << 14)
#define RTC_ISR_ALRAWF (1UL << 0)
#define RTC_ISR_WUTWF (1UL << 2)
#define RTC_ISR_ALRAF (1UL << 8)
#define RTC_ISR_WUTF (1UL << 10)
#define RTC_ALRMAR_MSK2 (1UL << 15)
#define RTC_ALRMAR_MSK3 (1UL << 23)
#define RTC_ALRMAR_MSK4 (1UL << 31)
#define ADC_ISR_ADRDY (1UL << 0)
#define ADC_ISR_EOC (1UL << 2)
#define ADC_IER_EOCIE (1UL << 2)
#define ADC_CR_ADEN (1UL << 0)
#define ADC_CR_ADDIS (1UL << 1)
#define ADC_CR_ADSTART (1UL << 2)
#define ADC_CR_ADVREGEN (1UL << 28)
#define ADC_CR_DEEPPWD (1UL << 29)
#define ADC_SQR1_SQ1_Pos 6
#define ADC_CCR_CKMODE_0 (1UL << 16)
#define DAC_CR_EN1 (1UL << 0)
#define COMP_CSR_EN (1UL << 0)
#define COMP_CSR_PWRMODE (3UL << 2)
#define COMP_CSR_INMSEL_Pos 4
#define COMP_CSR_BRGEN (1UL << 22)
#define COMP_CSR_SCALEN (1UL << 23)
#define VREFBUF_CSR_ENVR (1UL << 0)
#define LCD_CR_LCDEN (1UL << 0)
#define LCD_SR_UDR (1UL << 2)
#define LPTIM_CFGR_CKSEL (1UL << 0)
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
#define USART_CR3_WUS_1 (1UL << 21)
#define USART_CR3_WUFIE (1UL << 22)
#define USART_ISR_TXE (1UL << 7)
#define USART_ICR_TCCF (1UL << 6)
#define USART_ICR_WUCF (1UL << 20)
#define DBGMCU_CR_DBG_STOP (1UL << 1)
#endif
