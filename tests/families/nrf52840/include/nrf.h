/* What the nRF52840 has beyond the nRF52832, on top of the header of that. */
#ifndef NRF52840_H
#define NRF52840_H
#include "../../nrf52832/include/nrf.h"

typedef struct {
    __IO uint32_t SRC, DST, CNT;
} QSPI_TRANSFER_Type;
typedef struct {
    __IO uint32_t SCK, CSN;
    uint32_t RESERVED;
    __IO uint32_t IO0, IO1, IO2, IO3;
} QSPI_PSEL_Type;
typedef struct {
    __IO uint32_t TASKS_ACTIVATE, TASKS_READSTART, TASKS_WRITESTART, TASKS_ERASESTART, TASKS_DEACTIVATE;
    uint32_t RESERVED0[59];
    __IO uint32_t EVENTS_READY;
    uint32_t RESERVED1[128];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED2[125];
    __IO uint32_t ENABLE;
    QSPI_TRANSFER_Type READ;
    QSPI_TRANSFER_Type WRITE;
    uint32_t RESERVED3[2];
    QSPI_PSEL_Type PSEL;
    uint32_t RESERVED4;
    __IO uint32_t IFCONFIG0;
} NRF_QSPI_Type;
typedef struct {
    uint32_t RESERVED0[64];
    __IO uint32_t EVENTS_USBRESET;
    uint32_t RESERVED1[21];
    __IO uint32_t EVENTS_USBEVENT, EVENTS_EP0SETUP;
    uint32_t RESERVED2[105];
    __IO uint32_t INTENSET, INTENCLR;
    uint32_t RESERVED3[61];
    __IO uint32_t EVENTCAUSE;
    uint32_t RESERVED4[63];
    __IO uint32_t ENABLE, USBPULLUP;
    uint32_t RESERVED5[9];
    __IO uint32_t LOWPOWER;
} NRF_USBD_Type;
typedef struct {
    uint32_t RESERVED0[320];
    __IO uint32_t ENABLE;
} NRF_CRYPTOCELL_Type;

#define NRF_P1 ((NRF_GPIO_Type *)0x50000300UL)
#define NRF_USBD ((NRF_USBD_Type *)0x40027000UL)
#define NRF_UARTE1 ((NRF_UARTE_Type *)0x40028000UL)
#define NRF_QSPI ((NRF_QSPI_Type *)0x40029000UL)
#define NRF_TIMER3 ((NRF_TIMER_Type *)0x4001A000UL)
#define NRF_PWM3 ((NRF_PWM_Type *)0x4002D000UL)
#define NRF_SPIM3 ((NRF_SPIM_Type *)0x4002F000UL)
#define NRF_CRYPTOCELL ((NRF_CRYPTOCELL_Type *)0x5002A000UL)

#define POWER_INTENSET_USBDETECTED_Msk (1UL << 7)
#define QSPI_INTENSET_READY_Msk (1UL << 0)
#define USBD_INTENSET_USBEVENT_Msk (1UL << 22)
#endif
