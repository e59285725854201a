/* Register layouts that the families with per-pin control registers share, under the names of the vendor's headers. */
#ifndef PER_PIN_CONTROL_H
#define PER_PIN_CONTROL_H

#include <stdint.h>

typedef volatile uint8_t register8_t;
typedef volatile uint16_t register16_t;

#define CCP _SFR_MEM8(0x0034)
#define SREG _SFR_MEM8(0x003F)
#define CCP_SPM_gc 0x9D
#define CCP_IOREG_gc 0xD8

typedef struct PORT_struct {
    register8_t DIR, DIRSET, DIRCLR, DIRTGL, OUT, OUTSET, OUTCLR, OUTTGL, IN, INTFLAGS, PORTCTRL, PINCONFIG, PINCTRLUPD, PINCTRLSET, PINCTRLCLR;
    register8_t reserved_1;
    register8_t PIN0CTRL, PIN1CTRL, PIN2CTRL, PIN3CTRL, PIN4CTRL, PIN5CTRL, PIN6CTRL, PIN7CTRL;
    register8_t reserved_2[8];
} PORT_t;

#define PORT_ISC_gm 0x07
#define PORT_ISC_INTDISABLE_gc 0x00
#define PORT_ISC_BOTHEDGES_gc 0x01
#define PORT_ISC_RISING_gc 0x02
#define PORT_ISC_FALLING_gc 0x03
#define PORT_ISC_INPUT_DISABLE_gc 0x04
#define PORT_ISC_LEVEL_gc 0x05
#define PORT_PULLUPEN_bm 0x08
#define PORT_INVEN_bm 0x80

typedef struct VPORT_struct {
    register8_t DIR, OUT, IN, INTFLAGS;
} VPORT_t;

typedef struct SLPCTRL_struct {
    register8_t CTRLA, VREGCTRL;
} SLPCTRL_t;

#define SLPCTRL (*(SLPCTRL_t *)0x0050)
#define SLPCTRL_CTRLA _SFR_MEM8(0x0050)
#define SLPCTRL_SEN_bm 0x01

typedef struct RTC_struct {
    register8_t CTRLA, STATUS, INTCTRL, INTFLAGS, TEMP, DBGCTRL, CALIB, CLKSEL;
    register16_t CNT, PER, CMP;
    register8_t reserved_1[2];
    register8_t PITCTRLA, PITSTATUS, PITINTCTRL, PITINTFLAGS;
} RTC_t;

#define RTC (*(RTC_t *)0x0140)
#define RTC_RTCEN_bm 0x01
#define RTC_RUNSTDBY_bm 0x80
#define RTC_PRESCALER_DIV1_gc (0x00 << 3)
#define RTC_PRESCALER_DIV1024_gc (0x0A << 3)
#define RTC_CLKSEL_1K_gc 0x01
#define RTC_OVF_bm 0x01
#define RTC_CMP_bm 0x02
#define RTC_PITEN_bm 0x01
#define RTC_PI_bm 0x01
#define RTC_CTRLBUSY_bm 0x01
#define RTC_PERIOD_CYC1024_gc (0x09 << 3)
#define RTC_PERIOD_CYC8192_gc (0x0C << 3)
#define RTC_PERIOD_CYC32768_gc (0x0E << 3)

typedef struct USART_struct {
    register8_t RXDATAL, RXDATAH, TXDATAL, TXDATAH, STATUS, CTRLA, CTRLB, CTRLC;
    register16_t BAUD;
    register8_t CTRLD, DBGCTRL, EVCTRL, TXPLCTRL, RXPLCTRL, reserved_1;
} USART_t;

#define USART_DREIF_bm 0x20
#define USART_TXCIF_bm 0x40
#define USART_RXCIF_bm 0x80
#define USART_DREIE_bm 0x20
#define USART_TXCIE_bm 0x40
#define USART_RXCIE_bm 0x80
#define USART_RXSIE_bm 0x10
#define USART_SFDEN_bm 0x10
#define USART_TXEN_bm 0x40
#define USART_RXEN_bm 0x80
#define USART_CHSIZE_8BIT_gc 0x03

typedef struct TCA_SINGLE_struct {
    register8_t CTRLA, CTRLB, CTRLC, CTRLD, CTRLECLR, CTRLESET, CTRLFCLR, CTRLFSET, reserved_1, EVCTRL, INTCTRL, INTFLAGS;
    register8_t reserved_2[2];
    register8_t DBGCTRL, TEMP;
    register8_t reserved_3[16];
    register16_t CNT;
    register8_t reserved_4[4];
    register16_t PER, CMP0, CMP1, CMP2;
    register8_t reserved_5[8];
    register16_t PERBUF, CMP0BUF, CMP1BUF, CMP2BUF;
} TCA_SINGLE_t;

typedef union TCA_union {
    TCA_SINGLE_t SINGLE;
} TCA_t;

#define TCA0 (*(TCA_t *)0x0A00)
#define TCA_SINGLE_ENABLE_bm 0x01
#define TCA_SINGLE_CLKSEL_DIV64_gc (0x05 << 1)
#define TCA_SINGLE_WGMODE_SINGLESLOPE_gc 0x03
#define TCA_SINGLE_CMP0EN_bm 0x10
#define TCA_SINGLE_OVF_bm 0x01

typedef struct TCB_struct {
    register8_t CTRLA, CTRLB;
    register8_t reserved_1[2];
    register8_t EVCTRL, INTCTRL, INTFLAGS, STATUS, DBGCTRL, TEMP;
    register16_t CNT, CCMP;
    register8_t reserved_2[2];
} TCB_t;

#define TCB_ENABLE_bm 0x01
#define TCB_RUNSTDBY_bm 0x40
#define TCB_CAPT_bm 0x01

typedef struct BOD_struct {
    register8_t CTRLA, CTRLB;
    register8_t reserved_1[6];
    register8_t VLMCTRLA, INTCTRL, INTFLAGS, STATUS;
} BOD_t;

typedef struct WDT_struct {
    register8_t CTRLA, STATUS;
} WDT_t;

#define WDT (*(WDT_t *)0x0100)

#define PIN0_bm 0x01
#define PIN1_bm 0x02
#define PIN2_bm 0x04
#define PIN3_bm 0x08
#define PIN4_bm 0x10
#define PIN5_bm 0x20
#define PIN6_bm 0x40
#define PIN7_bm 0x80

#define PORTA (*(PORT_t *)0x0400)
#define PORTB (*(PORT_t *)0x0420)
#define PORTC (*(PORT_t *)0x0440)
#define PORTD (*(PORT_t *)0x0460)
#define PORTE (*(PORT_t *)0x0480)
#define PORTF (*(PORT_t *)0x04A0)
#define PORTG (*(PORT_t *)0x04C0)
#define VPORTA (*(VPORT_t *)0x0000)
#define VPORTB (*(VPORT_t *)0x0004)
#define VPORTC (*(VPORT_t *)0x0008)
#define VPORTD (*(VPORT_t *)0x000C)
#define USART0 (*(USART_t *)0x0800)
#define USART1 (*(USART_t *)0x0820)
#define USART2 (*(USART_t *)0x0840)

/* What avr/xmega.h offers is written for them too. */
#endif
