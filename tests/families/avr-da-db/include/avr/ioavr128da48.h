/* What the worked firmware needs of the part: blocks, instances and vectors under the names of the vendor's header. */
#include "../../../megaavr-0/include/per-pin-control.h"

#define SLPCTRL_SMODE_gm 0x0E
#define SLPCTRL_SMODE_STDBY_gc (0x01 << 1)
#define SLEEP_MODE_IDLE (0x00 << 1)
#define SLEEP_MODE_STANDBY (0x01 << 1)
#define SLEEP_MODE_PWR_DOWN (0x02 << 1)
#define SLPCTRL_PMODE_AUTO_gc 0x00
#define SLPCTRL_PMODE_FULL_gc 0x01

typedef struct CLKCTRL_struct {
    register8_t MCLKCTRLA, MCLKCTRLB, MCLKLOCK, MCLKSTATUS;
    register8_t reserved_1[4];
    register8_t OSCHFCTRLA, OSCHFTUNE;
    register8_t reserved_2[14];
    register8_t OSC32KCTRLA;
    register8_t reserved_3[3];
    register8_t XOSC32KCTRLA;
} CLKCTRL_t;

#define CLKCTRL (*(CLKCTRL_t *)0x0060)
#define CLKCTRL_FRQSEL_1M_gc (0x00 << 2)
#define CLKCTRL_CLKOUT_bm 0x80

#define BOD (*(BOD_t *)0x00A0)

typedef struct VREF_struct {
    register8_t ADC0REF, reserved_1, DAC0REF, reserved_2, ACREF;
} VREF_t;

#define VREF (*(VREF_t *)0x00B0)
#define VREF_REFSEL_2V048_gc 0x01
#define VREF_ALWAYSON_bm 0x80

typedef struct ADC_struct {
    register8_t CTRLA, CTRLB, CTRLC, CTRLD, CTRLE, SAMPCTRL;
    register8_t reserved_1[2];
    register8_t MUXPOS, MUXNEG, COMMAND, EVCTRL, INTCTRL, INTFLAGS, DBGCTRL, TEMP;
    register16_t RES, WINLT, WINHT;
} ADC_t;

#define ADC0 (*(ADC_t *)0x0600)
#define ADC_ENABLE_bm 0x01
#define ADC_RUNSTBY_bm 0x80
#define ADC_STCONV_bm 0x01
#define ADC_RESRDY_bm 0x01
#define ADC_MUXPOS_AIN3_gc 0x03

typedef struct AC_struct {
    register8_t CTRLA, CTRLB, MUXCTRL, reserved_1, reserved_2, DACREF, INTCTRL, STATUS;
} AC_t;

#define AC0 (*(AC_t *)0x0680)
#define AC_ENABLE_bm 0x01
#define AC_RUNSTDBY_bm 0x80
#define AC_CMP_bm 0x01
#define AC_CMPIF_bm 0x01
#define AC_MUXPOS_AINP0_gc (0x00 << 3)
#define AC_MUXNEG_DACREF_gc 0x04
#define AC_POWER_PROFILE2_gc (0x02 << 3)

#define TCB0 (*(TCB_t *)0x0B00)

#define RTC_CNT_vect _VECTOR(3)
#define RTC_PIT_vect _VECTOR(4)
#define PORTA_PORT_vect _VECTOR(6)
#define TCA0_OVF_vect _VECTOR(7)
#define TCB0_INT_vect _VECTOR(12)
#define USART0_RXC_vect _VECTOR(19)
#define PORTD_PORT_vect _VECTOR(22)
#define AC0_AC_vect _VECTOR(23)
#define ADC0_RESRDY_vect _VECTOR(24)
#define PORTC_PORT_vect _VECTOR(29)
#define PORTF_PORT_vect _VECTOR(34)
#define _VECTORS_SIZE 232
