// Registers of the part of ../devices/layout-32.yaml, as headers of such parts declare them: structures of volatile words.
#ifndef PART_H
#define PART_H
#include <stddef.h>
#include <stdint.h>

typedef struct {
    volatile uint32_t MODER, OTYPER, OSPEEDR, PUPDR, IDR, ODR, BSRR, LCKR, AFR[2], BRR;
} port_registers;

typedef struct {
    volatile uint32_t IMR, EMR, RTSR, FTSR, SWIER, PR;
} edge_registers;

typedef struct {
    volatile uint32_t CR1, CR2, SMCR, DIER, SR;
} timer_registers;

typedef struct {
    volatile uint32_t CSR, RVR, CVR;
} tick_registers;

#define GPIOA ((port_registers *)0x50000000UL)
#define GPIOB ((port_registers *)0x50000400UL)
#define EXTI ((edge_registers *)0x40010400UL)
#define TIM2 ((timer_registers *)0x40000000UL)
#define SYST ((tick_registers *)0xE000E010UL)
#define IOPENR (*(volatile uint32_t *)0x4002102CUL)
#define APBENR (*(volatile uint32_t *)0x40021038UL)
#define DBG_CR (*(volatile uint32_t *)0x40015804UL)
#define RCC_CR (*(volatile uint32_t *)0x40021000UL)
#define LPUART_CR1 (*(volatile uint32_t *)0x40004800UL)
#define LPUART_CR3 (*(volatile uint32_t *)0x40004808UL)
#define PWR_CR (*(volatile uint32_t *)0x40007000UL)
#define NVIC_ISER (*(volatile uint32_t *)0xE000E100UL)
#define NVIC_ICER (*(volatile uint32_t *)0xE000E180UL)
#define SCB_SCR (*(volatile uint32_t *)0xE000ED10UL)

#define IOPENR_A 0x1u
#define IOPENR_B 0x2u
#define APBENR_TIM2 0x1u
#define APBENR_PWR (1u << 28)
#define PWR_LPSDSR 0x1u
#define PWR_BUCKEN 0x4u
#define DBG_STOP 0x2u
#define DBG_STANDBY 0x4u
#define RCC_FASTON 0x1u
#define RCC_FASTKERON 0x2u
#define LPUART_UE 0x1u
#define LPUART_UCESM (1u << 23)
#define SCR_SLEEPONEXIT 0x2u
#define SCR_SLEEPDEEP 0x4u

enum { IRQ_EXTI = 7, IRQ_TIM2 = 15 };

// A macro, so that each use is a resting point of its own line.
#define wait_for_interrupt() __asm__ volatile("wfi" ::: "memory")
static inline void barrier(void) { __asm__ volatile("dsb 0xF" ::: "memory"); }
static inline void interrupts_off(void) { __asm__ volatile("cpsid i" ::: "memory"); }
static inline void interrupts_on(void) { __asm__ volatile("cpsie i" ::: "memory"); }
static inline uint32_t get_mask(void)
{
    uint32_t mask;
    __asm__ volatile("MRS %0, primask" : "=r"(mask)::"memory");
    return mask;
}
static inline void set_mask(uint32_t mask) { __asm__ volatile("MSR primask, %0" ::"r"(mask) : "memory"); }
#define WEAK __attribute__((weak))
#endif
