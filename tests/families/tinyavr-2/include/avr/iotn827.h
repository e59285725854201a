/* What the worked firmware needs of the part: blocks, instances and vectors under the names of the vendor's header. */
#include "../../../megaavr-0/include/per-pin-control.h"

#define SLPCTRL_SMODE_gm 0x06
#define SLEEP_MODE_IDLE (0x00 << 1)
#define SLEEP_MODE_STANDBY (0x01 << 1)
#define SLEEP_MODE_PWR_DOWN (0x02 << 1)

typedef struct CLKCTRL_struct {
    register8_t MCLKCTRLA, MCLKCTRLB, MCLKLOCK, MCLKSTATUS;
    register8_t reserved_1[12];
    register8_t OSC20MCTRLA;
    register8_t reserved_2[7];
    register8_t OSC32KCTRLA;
    register8_t reserved_3[3];
    register8_t XOSC32KCTRLA;
} CLKCTRL_t;

#define CLKCTRL (*(CLKCTRL_t *)0x0060)
#define CLKCTRL_PEN_bm 0x01
#define CLKCTRL_PDIV_16X_gc (0x03 << 1)
#define CLKCTRL_RUNSTDBY_bm 0x02

typedef struct VREF_struct {
    register8_t CTRLA, CTRLB;
} VREF_t;

#define VREF (*(VREF_t *)0x00A0)
#define VREF_NVMREFEN_bm 0x04

#include "../twelve-bit-converter.h"

#define TCB0 (*(TCB_t *)0x0A80)

#define RTC_CNT_vect _VECTOR(3)
#define RTC_PIT_vect _VECTOR(4)
#define PORTA_PORT_vect _VECTOR(6)
#define PORTB_PORT_vect _VECTOR(7)
#define TCA0_OVF_vect _VECTOR(8)
#define TCB0_INT_vect _VECTOR(13)
#define USART0_RXC_vect _VECTOR(17)
#define ADC0_RESRDY_vect _VECTOR(22)
#define _VECTORS_SIZE 120
