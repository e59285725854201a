/* The registers and intrinsics of the processor that the firmware here uses, named as its users know them. */
#ifndef CORE_CM_H
#define CORE_CM_H
#include <stdint.h>

#define __IO volatile

typedef struct {
    __IO uint32_t ISER[1];
    uint32_t RESERVED0[31];
    __IO uint32_t ICER[1];
    uint32_t RESERVED1[31];
    __IO uint32_t ISPR[1];
    uint32_t RESERVED2[31];
    __IO uint32_t ICPR[1];
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

#define SCB_SCR_SLEEPONEXIT_Msk (1UL << 1)
#define SCB_SCR_SLEEPDEEP_Msk (1UL << 2)
#define SysTick_CTRL_ENABLE_Msk (1UL << 0)
#define SysTick_CTRL_TICKINT_Msk (1UL << 1)
#define SysTick_CTRL_CLKSOURCE_Msk (1UL << 2)

static inline void NVIC_EnableIRQ(IRQn_Type line)
{
    if ((int32_t)line >= 0)
        NVIC->ISER[(uint32_t)line >> 5] = 1UL << ((uint32_t)line & 31);
}

static inline void NVIC_DisableIRQ(IRQn_Type line)
{
    if ((int32_t)line >= 0)
        NVIC->ICER[(uint32_t)line >> 5] = 1UL << ((uint32_t)line & 31);
}

#define __WFI() __asm__ volatile("wfi" ::: "memory")
#define __WFE() __asm__ volatile("wfe" ::: "memory")
#define __disable_irq() __asm__ volatile("cpsid i" ::: "memory")
#define __enable_irq() __asm__ volatile("cpsie i" ::: "memory")
#define __DSB() __asm__ volatile("dsb 0xF" ::: "memory")
#define __NOP() __asm__ volatile("nop")
#endif
