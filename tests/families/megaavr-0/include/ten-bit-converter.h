/* The parts with the 20 MHz oscillator: clock controller, references, ten-bit converter, under the names of the vendor's headers. */
#ifndef TEN_BIT_CONVERTER_H
#define TEN_BIT_CONVERTER_H

#include "per-pin-control.h"

#define SLPCTRL_SMODE_gm 0x06
#define SLPCTRL_SMODE_IDLE_gc (0x00 << 1)
#define SLPCTRL_SMODE_STDBY_gc (0x01 << 1)
#define SLPCTRL_SMODE_PDOWN_gc (0x02 << 1)
#define SLEEP_MODE_IDLE (0x00 << 1)
#define SLEEP_MODE_STANDBY (0x01 << 1)
#define SLEEP_MODE_PWR_DOWN (0x02 << 1)

typedef struct CLKCTRL_struct {
    register8_t MCLKCTRLA, MCLKCTRLB, MCLKLOCK, MCLKSTATUS;
    register8_t reserved_1[12];
    register8_t OSC20MCTRLA, OSC20MCALIBA, OSC20MCALIBB;
    register8_t reserved_2[5];
    register8_t OSC32KCTRLA;
    register8_t reserved_3[3];
    register8_t XOSC32KCTRLA;
} CLKCTRL_t;

#define CLKCTRL (*(CLKCTRL_t *)0x0060)
#define CLKCTRL_CLKOUT_bm 0x80
#define CLKCTRL_PEN_bm 0x01
#define CLKCTRL_PDIV_4X_gc (0x01 << 1)
#define CLKCTRL_RUNSTDBY_bm 0x02

#define BOD (*(BOD_t *)0x0080)

typedef struct VREF_struct {
    register8_t CTRLA, CTRLB;
} VREF_t;

#define VREF (*(VREF_t *)0x00A0)
#define VREF_ADC0REFEN_bm 0x02

typedef struct ADC_struct {
    register8_t CTRLA, CTRLB, CTRLC, CTRLD, CTRLE, SAMPCTRL, MUXPOS, reserved_1, COMMAND, EVCTRL, INTCTRL, INTFLAGS, DBGCTRL, TEMP;
    register8_t reserved_2[2];
    register16_t RES, WINLT, WINHT;
    register8_t CALIB;
} ADC_t;

#define ADC0 (*(ADC_t *)0x0600)
#define ADC_ENABLE_bm 0x01
#define ADC_RUNSTBY_bm 0x80
#define ADC_STCONV_bm 0x01
#define ADC_RESRDY_bm 0x01
#define ADC_PRESC_DIV4_gc 0x01
#define ADC_REFSEL_VDDREF_gc (0x01 << 4)
#define ADC_MUXPOS_AIN1_gc 0x01
#define ADC_MUXPOS_AIN3_gc 0x03
#define ADC_MUXPOS_AIN6_gc 0x06

#endif
