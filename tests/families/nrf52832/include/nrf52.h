/* The registers that the firmware here uses, named as the part's own header names them. Addresses: nrf52.svd in the public
   collection of CMSIS-SVD files. */
#ifndef NRF52_H
#define NRF52_H
#include <stdint.h>

#define REGISTER(address) (*(volatile uint32_t *)(address))

typedef struct {
    volatile uint32_t UNUSED0[321], OUT, OUTSET, OUTCLR, IN, DIR, DIRSET, DIRCLR, LATCH, DETECTMODE, UNUSED1[118], PIN_CNF[32];
} NRF_GPIO_Type;
#define NRF_P0 ((NRF_GPIO_Type *)0x50000000UL)

typedef struct {
    volatile uint32_t TASKS_START, TASKS_STOP, TASKS_CLEAR, UNUSED0[61], EVENTS_TICK, EVENTS_OVRFLW, UNUSED1[14];
    volatile uint32_t EVENTS_COMPARE[4], UNUSED2[109], INTENSET, INTENCLR, UNUSED3[126], COUNTER, PRESCALER, UNUSED4[13], CC[4];
} NRF_RTC_Type;
#define NRF_RTC0 ((NRF_RTC_Type *)0x4000B000UL)

#define CLOCK_TASKS_HFCLKSTART REGISTER(0x40000000UL)
#define CLOCK_TASKS_LFCLKSTART REGISTER(0x40000008UL)
#define CLOCK_EVENTS_LFCLKSTARTED REGISTER(0x40000104UL)
#define CLOCK_LFCLKSRC REGISTER(0x40000518UL)
#define POWER_TASKS_CONSTLAT REGISTER(0x40000078UL)
#define POWER_DCDCEN REGISTER(0x40000578UL)
#define TIMER1_TASKS_START REGISTER(0x40009000UL)
#define NVIC_ISER0 REGISTER(0xE000E100UL)

#define RTC0_IRQn 11
#define GPIO_PIN_CNF_DIR_Output 1u
#define GPIO_PIN_CNF_INPUT_Disconnect (1u << 1)

#define __WFE() __asm__ volatile("wfe" ::: "memory")
#endif
