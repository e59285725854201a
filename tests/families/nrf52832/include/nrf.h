/* A small register header of the nRF52 families: structures, addresses and bits with the names that firmware for these parts is
   written in, only what the firmware here uses. The layout follows the register descriptions in CMSIS-SVD form. */
#ifndef NRF_H
#define NRF_H
#include <stdint.h>

#define __IO volatile

typedef enum {
    POWER_CLOCK_IRQn = 0,
    RADIO_IRQn = 1,
    UARTE0_UART0_IRQn = 2,
    SPIM0_SPIS0_TWIM0_TWIS0_SPI0_TWI0_IRQn = 3,
    SPIM1_SPIS1_TWIM1_TWIS1_SPI1_TWI1_IRQn = 4,
    GPIOTE_IRQn = 6,
    SAADC_IRQn = 7,
    TIMER0_IRQn = 8,
    TIMER1_IRQn = 9,
    TIMER2_IRQn = 10,
    RTC0_IRQn = 11,
    TEMP_IRQn = 12,
    RNG_IRQn = 13,
    ECB_IRQn = 14,
    WDT_IRQn = 16,
    RTC1_IRQn = 17,
    COMP_LPCOMP_IRQn = 19,
    PWM0_IRQn = 28,
    SPIM2_SPIS2_SPI2_IRQn = 35,
    RTC2_IRQn = 36,
    FPU_IRQn = 38,
    USBD_IRQn = 39,
    UARTE1_IRQn = 40,
    QSPI_IRQn = 41,
    SPIM3_IRQn = 47
} IRQn_Type;

typedef struct {
    __IO uint32_t ISER[8];
    uint32_t RESERVED0[24];
    __IO uint32_t ICER[8];
    uint32_t RESERVED1[24];
    __IO uint32_t ISPR[8];
    uint32_t RESERVED2[24];
    __IO uint32_t ICPR[8];
} NVIC_Type;
typedef struct {
    __IO uint32_t CPUID, ICSR, VTOR, AIRCR, SCR, CCR;
} SCB_Type;
typedef struct {
    __IO uint32_t CTRL, LOAD, VAL, CALIB;
} SysTick_Type;

#define NVIC ((NVIC_Type *)0xE000E100UL)
#define SCB ((SCB_Type *)0xE000ED00UL)
#define SysTick ((SysTick_Type *)0xE000E010UL)
#define SCB_SCR_SEVONPEND_Msk (1UL << 4)

static inline void NVIC_EnableIRQ(IRQn_Type line)
{
    NVIC->ISER[(uint32_t)line >> 5] = 1UL << ((uint32_t)line & 31);
}

static inline void NVIC_DisableIRQ(IRQn_Type line)
{
    NVIC->ICER[(uint32_t)line >> 5] = 1UL << ((uint32_t)line & 31);
}

static inline void NVIC_ClearPendingIRQ(IRQn_Type line)
{
    NVIC->ICPR[(uint32_t)line >> 5] = 1UL << ((uint32_t)line & 31);
}

#define __WFI() __asm__ volatile("wfi" ::: "memory")
#define __WFE() __asm__ volatile("wfe" ::: "memory")
#define __SEV() __asm__ volatile("sev" ::: "memory")
#define __DSB() __asm__ volatile("dsb" ::: "memory")
#define __disable_irq() __asm__ volatile("cpsid i" ::: "memory")
#define __enable_irq() __asm__ volatile("cpsie i" ::: "memory")

typedef struct {
    uint32_t RESERVED0[321];
    __IO uint32_t OUT, OUTSET, OUTCLR, IN, DIR, DIRSET, DIRCLR, LATCH, DETECTMODE;
    uint32_t RESERVED1[118];
    __IO uint32_t PIN_CNF[32];
} NRF_GPIO_Type;
typedef struct {
    __IO uint32_t TASKS_HFCLKSTART, TASKS_HFCLKSTOP, TASKS_LFCLKSTART, TASKS_LFCLKSTOP, TASKS_CAL;
    uint32_t RESERVED0[59];
    __IO uint32_t EVENTS_HFCLKSTARTED, EVENTS_LFCLKSTARTED;
    uint32_t RESERVED1[127];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[64];
    __IO uint32_t HFCLKSTAT;
    uint32_t RESERVED3[2];
    __IO uint32_t LFCLKSTAT;
    uint32_t RESERVED4[63];
    __IO uint32_t LFCLKSRC;
    uint32_t RESERVED5[16];
    __IO uint32_t TRACECONFIG;
} NRF_CLOCK_Type;
typedef struct {
    __IO uint32_t POWER, POWERSET, POWERCLR;
    uint32_t RESERVED;
} POWER_RAM_Type;
typedef struct {
    uint32_t RESERVED0[30];
    __IO uint32_t TASKS_CONSTLAT, TASKS_LOWPWR;
    uint32_t RESERVED1[34];
    __IO uint32_t EVENTS_POFWARN;
    uint32_t RESERVED2[4];
    __IO uint32_t EVENTS_USBDETECTED, EVENTS_USBREMOVED;
    uint32_t RESERVED3[120];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED4[61];
    __IO uint32_t RESETREAS;
    uint32_t RESERVED5[13];
    __IO uint32_t USBREGSTATUS;
    uint32_t RESERVED6[49];
    __IO uint32_t SYSTEMOFF;
    uint32_t RESERVED7[3];
    __IO uint32_t POFCON;
    uint32_t RESERVED8[2];
    __IO uint32_t GPREGRET;
    uint32_t RESERVED9[22];
    __IO uint32_t DCDCEN;
    uint32_t RESERVED10;
    __IO uint32_t DCDCEN0;
    uint32_t RESERVED11[47];
    __IO uint32_t MAINREGSTATUS;
    uint32_t RESERVED12[175];
    POWER_RAM_Type RAM[9];
} NRF_POWER_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_STOP, TASKS_CLEAR;
    uint32_t RESERVED0[61];
    __IO uint32_t EVENTS_TICK, EVENTS_OVRFLW;
    uint32_t RESERVED1[14];
    __IO uint32_t EVENTS_COMPARE[4];
    uint32_t RESERVED2[109];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED3[13];
    __IO uint32_t EVTEN, EVTENSET, EVTENCLR;
    uint32_t RESERVED4[110];
    __IO uint32_t COUNTER, PRESCALER;
    uint32_t RESERVED5[13];
    __IO uint32_t CC[4];
} NRF_RTC_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_STOP, TASKS_COUNT, TASKS_CLEAR, TASKS_SHUTDOWN;
    uint32_t RESERVED0[11];
    __IO uint32_t TASKS_CAPTURE[6];
    uint32_t RESERVED1[58];
    __IO uint32_t EVENTS_COMPARE[6];
    uint32_t RESERVED2[42];
    __IO uint32_t SHORTS;
    uint32_t RESERVED3[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED4[126];
    __IO uint32_t MODE, BITMODE;
    uint32_t RESERVED5;
    __IO uint32_t PRESCALER;
    uint32_t RESERVED6[11];
    __IO uint32_t CC[6];
} NRF_TIMER_Type;
typedef struct {
    __IO uint32_t TASKS_OUT[8];
    uint32_t RESERVED0[56];
    __IO uint32_t EVENTS_IN[8];
    uint32_t RESERVED1[23];
    __IO uint32_t EVENTS_PORT;
    uint32_t RESERVED2[97];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED3[129];
    __IO uint32_t CONFIG[8];
} NRF_GPIOTE_Type;
typedef struct {
    __IO uint32_t PSELP, PSELN, CONFIG, LIMIT;
} SAADC_CH_Type;
typedef struct {
    __IO uint32_t PTR, MAXCNT, AMOUNT;
} BUFFER_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_SAMPLE, TASKS_STOP;
    uint32_t RESERVED0[61];
    __IO uint32_t EVENTS_STARTED, EVENTS_END, EVENTS_DONE, EVENTS_RESULTDONE, EVENTS_CALIBRATEDONE, EVENTS_STOPPED;
    uint32_t RESERVED1[123];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[61];
    __IO uint32_t STATUS;
    uint32_t RESERVED3[63];
    __IO uint32_t ENABLE;
    uint32_t RESERVED4[3];
    SAADC_CH_Type CH[8];
    uint32_t RESERVED5[24];
    __IO uint32_t RESOLUTION, OVERSAMPLE, SAMPLERATE;
    uint32_t RESERVED6[12];
    BUFFER_Type RESULT;
} NRF_SAADC_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_STOP;
    uint32_t RESERVED0[62];
    __IO uint32_t EVENTS_DATARDY;
    uint32_t RESERVED1[128];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[127];
    __IO uint32_t TEMP;
} NRF_TEMP_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_STOP;
    uint32_t RESERVED0[62];
    __IO uint32_t EVENTS_VALRDY;
    uint32_t RESERVED1[63];
    __IO uint32_t SHORTS;
    uint32_t RESERVED2[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED3[126];
    __IO uint32_t CONFIG, VALUE;
} NRF_RNG_Type;
typedef struct {
    __IO uint32_t TASKS_STARTECB, TASKS_STOPECB;
    uint32_t RESERVED0[62];
    __IO uint32_t EVENTS_ENDECB, EVENTS_ERRORECB;
    uint32_t RESERVED1[127];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[126];
    __IO uint32_t ECBDATAPTR;
} NRF_ECB_Type;
typedef struct {
    __IO uint32_t TASKS_START;
    uint32_t RESERVED0[63];
    __IO uint32_t EVENTS_TIMEOUT;
    uint32_t RESERVED1[128];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[61];
    __IO uint32_t RUNSTATUS;
    uint32_t RESERVED3[64];
    __IO uint32_t CRV, RREN, CONFIG;
    uint32_t RESERVED4[60];
    __IO uint32_t RR[8];
} NRF_WDT_Type;
typedef struct {
    __IO uint32_t TASKS_START, TASKS_STOP;
    uint32_t RESERVED0[62];
    __IO uint32_t EVENTS_READY, EVENTS_DOWN, EVENTS_UP, EVENTS_CROSS;
    uint32_t RESERVED1[125];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[125];
    __IO uint32_t ENABLE, PSEL, REFSEL;
    uint32_t RESERVED3[5];
    __IO uint32_t ANADETECT;
} NRF_LPCOMP_Type;
typedef struct {
    __IO uint32_t SCK, MOSI, MISO, CSN;
} SPIM_PSEL_Type;
typedef struct {
    __IO uint32_t SCL, SDA;
} TWIM_PSEL_Type;
typedef struct {
    __IO uint32_t RTS, TXD, CTS, RXD;
} UARTE_PSEL_Type;
typedef struct {
    uint32_t RESERVED0[4];
    __IO uint32_t TASKS_START, TASKS_STOP;
    uint32_t RESERVED1[59];
    __IO uint32_t EVENTS_STOPPED;
    uint32_t RESERVED2[2];
    __IO uint32_t EVENTS_ENDRX;
    uint32_t RESERVED3;
    __IO uint32_t EVENTS_END;
    uint32_t RESERVED4;
    __IO uint32_t EVENTS_ENDTX;
    uint32_t RESERVED5[55];
    __IO uint32_t SHORTS;
    uint32_t RESERVED6[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED7[125];
    __IO uint32_t ENABLE;
    uint32_t RESERVED8;
    SPIM_PSEL_Type PSEL;
    uint32_t RESERVED9[3];
    __IO uint32_t FREQUENCY;
    uint32_t RESERVED10[3];
    BUFFER_Type RXD;
    uint32_t RESERVED11;
    BUFFER_Type TXD;
    uint32_t RESERVED12;
    __IO uint32_t CONFIG;
    uint32_t RESERVED13[26];
    __IO uint32_t ORC;
} NRF_SPIM_Type;
typedef struct {
    __IO uint32_t TASKS_STARTRX;
    uint32_t RESERVED0;
    __IO uint32_t TASKS_STARTTX;
    uint32_t RESERVED1[2];
    __IO uint32_t TASKS_STOP;
    uint32_t RESERVED2[59];
    __IO uint32_t EVENTS_STOPPED;
    uint32_t RESERVED3[7];
    __IO uint32_t EVENTS_ERROR;
    uint32_t RESERVED4[13];
    __IO uint32_t EVENTS_LASTRX, EVENTS_LASTTX;
    uint32_t RESERVED5[39];
    __IO uint32_t SHORTS;
    uint32_t RESERVED6[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED7[125];
    __IO uint32_t ENABLE;
    uint32_t RESERVED8;
    TWIM_PSEL_Type PSEL;
    uint32_t RESERVED9[5];
    __IO uint32_t FREQUENCY;
    uint32_t RESERVED10[3];
    BUFFER_Type RXD;
    uint32_t RESERVED11;
    BUFFER_Type TXD;
    uint32_t RESERVED12[14];
    __IO uint32_t ADDRESS;
} NRF_TWIM_Type;
typedef struct {
    __IO uint32_t TASKS_STARTRX, TASKS_STOPRX, TASKS_STARTTX, TASKS_STOPTX;
    uint32_t RESERVED0[62];
    __IO uint32_t EVENTS_RXDRDY;
    uint32_t RESERVED1;
    __IO uint32_t EVENTS_ENDRX;
    uint32_t RESERVED2[3];
    __IO uint32_t EVENTS_ENDTX;
    uint32_t RESERVED3[8];
    __IO uint32_t EVENTS_RXTO;
    uint32_t RESERVED4[4];
    __IO uint32_t EVENTS_TXSTOPPED;
    uint32_t RESERVED5[41];
    __IO uint32_t SHORTS;
    uint32_t RESERVED6[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED7[125];
    __IO uint32_t ENABLE;
    uint32_t RESERVED8;
    UARTE_PSEL_Type PSEL;
    uint32_t RESERVED9[3];
    __IO uint32_t BAUDRATE;
    uint32_t RESERVED10[3];
    BUFFER_Type RXD;
    uint32_t RESERVED11;
    BUFFER_Type TXD;
    uint32_t RESERVED12[7];
    __IO uint32_t CONFIG;
} NRF_UARTE_Type;
typedef struct {
    __IO uint32_t OUT[4];
} PWM_PSEL_Type;
typedef struct {
    __IO uint32_t PTR, CNT, REFRESH, ENDDELAY;
    uint32_t RESERVED[4];
} PWM_SEQ_Type;
typedef struct {
    uint32_t RESERVED0;
    __IO uint32_t TASKS_STOP, TASKS_SEQSTART[2];
    uint32_t RESERVED1[61];
    __IO uint32_t EVENTS_STOPPED;
    uint32_t RESERVED2[2];
    __IO uint32_t EVENTS_SEQEND[2];
    uint32_t RESERVED3;
    __IO uint32_t EVENTS_LOOPSDONE;
    uint32_t RESERVED4[56];
    __IO uint32_t SHORTS;
    uint32_t RESERVED5[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED6[125];
    __IO uint32_t ENABLE, MODE, COUNTERTOP, PRESCALER, DECODER, LOOP;
    uint32_t RESERVED7[2];
    PWM_SEQ_Type SEQ[2];
    PWM_PSEL_Type PSEL;
} NRF_PWM_Type;
typedef struct {
    __IO uint32_t EEP, TEP;
} PPI_CH_Type;
typedef struct {
    uint32_t RESERVED0[320];
    __IO uint32_t CHEN, CHENSET, CHENCLR;
    uint32_t RESERVED1;
    PPI_CH_Type CH[20];
} NRF_PPI_Type;
typedef struct {
    __IO uint32_t TASKS_TXEN, TASKS_RXEN, TASKS_START;
    uint32_t RESERVED0;
    __IO uint32_t TASKS_DISABLE;
    uint32_t RESERVED1[59];
    __IO uint32_t EVENTS_READY;
    uint32_t RESERVED2[2];
    __IO uint32_t EVENTS_END, EVENTS_DISABLED;
    uint32_t RESERVED3[59];
    __IO uint32_t SHORTS;
    uint32_t RESERVED4[64];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED5[126];
    __IO uint32_t PACKETPTR, FREQUENCY, TXPOWER, MODE, PCNF0, PCNF1, BASE0;
    uint32_t RESERVED6;
    __IO uint32_t PREFIX0;
} NRF_RADIO_Type;

#define NRF_P0 ((NRF_GPIO_Type *)0x50000000UL)
#define NRF_CLOCK ((NRF_CLOCK_Type *)0x40000000UL)
#define NRF_POWER ((NRF_POWER_Type *)0x40000000UL)
#define NRF_RADIO ((NRF_RADIO_Type *)0x40001000UL)
#define NRF_UARTE0 ((NRF_UARTE_Type *)0x40002000UL)
#define NRF_SPIM0 ((NRF_SPIM_Type *)0x40003000UL)
#define NRF_TWIM0 ((NRF_TWIM_Type *)0x40003000UL)
#define NRF_SPIM1 ((NRF_SPIM_Type *)0x40004000UL)
#define NRF_TWIM1 ((NRF_TWIM_Type *)0x40004000UL)
#define NRF_GPIOTE ((NRF_GPIOTE_Type *)0x40006000UL)
#define NRF_SAADC ((NRF_SAADC_Type *)0x40007000UL)
#define NRF_TIMER0 ((NRF_TIMER_Type *)0x40008000UL)
#define NRF_TIMER1 ((NRF_TIMER_Type *)0x40009000UL)
#define NRF_TIMER2 ((NRF_TIMER_Type *)0x4000A000UL)
#define NRF_RTC0 ((NRF_RTC_Type *)0x4000B000UL)
#define NRF_TEMP ((NRF_TEMP_Type *)0x4000C000UL)
#define NRF_RNG ((NRF_RNG_Type *)0x4000D000UL)
#define NRF_ECB ((NRF_ECB_Type *)0x4000E000UL)
#define NRF_WDT ((NRF_WDT_Type *)0x40010000UL)
#define NRF_RTC1 ((NRF_RTC_Type *)0x40011000UL)
#define NRF_LPCOMP ((NRF_LPCOMP_Type *)0x40013000UL)
#define NRF_PWM0 ((NRF_PWM_Type *)0x4001C000UL)
#define NRF_PPI ((NRF_PPI_Type *)0x4001F000UL)
#define NRF_SPIM2 ((NRF_SPIM_Type *)0x40023000UL)
#define NRF_RTC2 ((NRF_RTC_Type *)0x40024000UL)

#define GPIO_PIN_CNF_DIR_Pos 0
#define GPIO_PIN_CNF_DIR_Input 0UL
#define GPIO_PIN_CNF_DIR_Output 1UL
#define GPIO_PIN_CNF_INPUT_Pos 1
#define GPIO_PIN_CNF_INPUT_Connect 0UL
#define GPIO_PIN_CNF_INPUT_Disconnect 1UL
#define GPIO_PIN_CNF_PULL_Pos 2
#define GPIO_PIN_CNF_PULL_Disabled 0UL
#define GPIO_PIN_CNF_PULL_Pulldown 1UL
#define GPIO_PIN_CNF_PULL_Pullup 3UL
#define GPIO_PIN_CNF_SENSE_Pos 16
#define GPIO_PIN_CNF_SENSE_High 2UL
#define GPIO_PIN_CNF_SENSE_Low 3UL
#define CLOCK_LFCLKSRC_SRC_RC 0UL
#define CLOCK_LFCLKSRC_SRC_Xtal 1UL
#define POWER_DCDCEN_DCDCEN_Enabled 1UL
#define POWER_SYSTEMOFF_SYSTEMOFF_Enter 1UL
#define RTC_INTENSET_TICK_Msk (1UL << 0)
#define RTC_INTENSET_COMPARE0_Msk (1UL << 16)
#define RTC_INTENSET_COMPARE1_Msk (1UL << 17)
#define TIMER_INTENSET_COMPARE0_Msk (1UL << 16)
#define TIMER_SHORTS_COMPARE0_CLEAR_Msk (1UL << 0)
#define TIMER_SHORTS_COMPARE0_STOP_Msk (1UL << 8)
#define GPIOTE_INTENSET_IN0_Msk (1UL << 0)
#define GPIOTE_INTENSET_PORT_Msk (1UL << 31)
#define GPIOTE_CONFIG_MODE_Event 1UL
#define GPIOTE_CONFIG_MODE_Task 3UL
#define GPIOTE_CONFIG_PSEL_Pos 8
#define GPIOTE_CONFIG_POLARITY_Pos 16
#define GPIOTE_CONFIG_POLARITY_HiToLo 2UL
#define SAADC_INTENSET_END_Msk (1UL << 1)
#define SAADC_INTENSET_STOPPED_Msk (1UL << 5)
#define SAADC_ENABLE_ENABLE_Enabled 1UL
#define SAADC_CH_PSELP_PSELP_AnalogInput0 1UL
#define SAADC_CH_PSELP_PSELP_AnalogInput4 5UL
#define SAADC_CH_PSELP_PSELP_VDD 9UL
#define SAADC_CH_CONFIG_GAIN_Pos 8
#define SAADC_CH_CONFIG_GAIN_Gain1_6 0UL
#define SAADC_CH_CONFIG_TACQ_Pos 16
#define SAADC_CH_CONFIG_TACQ_10us 2UL
#define TEMP_INTENSET_DATARDY_Msk (1UL << 0)
#define RNG_SHORTS_VALRDY_STOP_Msk (1UL << 0)
#define RNG_INTENSET_VALRDY_Msk (1UL << 0)
#define ECB_INTENSET_ENDECB_Msk (1UL << 0)
#define WDT_CONFIG_SLEEP_Pause 0UL
#define WDT_CONFIG_SLEEP_Run 1UL
#define WDT_RR_RR_Reload 0x6E524635UL
#define LPCOMP_ENABLE_ENABLE_Enabled 1UL
#define LPCOMP_INTENSET_UP_Msk (1UL << 2)
#define SPIM_ENABLE_ENABLE_Enabled 7UL
#define SPIM_INTENSET_END_Msk (1UL << 6)
#define TWIM_ENABLE_ENABLE_Enabled 6UL
#define TWIM_SHORTS_LASTTX_STARTRX_Msk (1UL << 7)
#define TWIM_SHORTS_LASTTX_STOP_Msk (1UL << 9)
#define TWIM_SHORTS_LASTRX_STOP_Msk (1UL << 12)
#define TWIM_INTENSET_STOPPED_Msk (1UL << 1)
#define TWIM_INTENSET_ERROR_Msk (1UL << 9)
#define UARTE_ENABLE_ENABLE_Enabled 8UL
#define UARTE_BAUDRATE_BAUDRATE_Baud9600 0x00275000UL
#define UARTE_BAUDRATE_BAUDRATE_Baud115200 0x01D60000UL
#define UARTE_INTENSET_ENDRX_Msk (1UL << 4)
#define UARTE_INTENSET_ENDTX_Msk (1UL << 8)
#define UARTE_INTENSET_TXSTOPPED_Msk (1UL << 22)
#define RADIO_SHORTS_READY_START_Msk (1UL << 0)
#define RADIO_SHORTS_END_DISABLE_Msk (1UL << 1)
#define RADIO_INTENSET_DISABLED_Msk (1UL << 4)
#endif
